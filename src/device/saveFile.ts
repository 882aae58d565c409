/** Hands a text or bytes to the browser as a download under a name. */
export function saveFile(name: string, content: string | Uint8Array<ArrayBuffer>, mime: string): void {
  const address = URL.createObjectURL(new Blob([content], { type: mime }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.hidden = true
  document.body.append(link)
  link.click()
  link.remove()
  // Some browsers read the address only after the click has been handled.
  setTimeout(() => URL.revokeObjectURL(address), 60_000)
}
