/** Lets the maker pick one file; null where nothing was picked. `accept`: as in a file input, '.json,application/json'. */
export function pickFile(accept: string): Promise<File | null> {
  return new Promise((picked) => {
    const input = document.createElement('input')
    input.type = 'file'
    input.accept = accept
    input.hidden = true
    input.addEventListener('change', () => {
      picked(input.files?.[0] ?? null)
      input.remove()
    })
    input.addEventListener('cancel', () => {
      picked(null)
      input.remove()
    })
    document.body.append(input)
    input.click()
  })
}
