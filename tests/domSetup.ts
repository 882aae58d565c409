import '@testing-library/jest-dom/vitest'
import { cleanup, configure } from '@testing-library/react'
import { afterEach } from 'vitest'

afterEach(cleanup)
// Sheets come when they are first needed: on a busy machine that takes longer than the second that is waited otherwise.
configure({ asyncUtilTimeout: 8000 })

// jsdom draws nothing: it knows neither modal dialogs, nor popovers, nor the size of a box. Just enough of them for a test.
const dialog = HTMLDialogElement.prototype
dialog.showModal ??= function showModal(this: HTMLDialogElement) {
  this.open = true
}
dialog.show ??= function show(this: HTMLDialogElement) {
  this.open = true
}
dialog.close ??= function close(this: HTMLDialogElement, value?: string) {
  if (!this.open) return
  this.open = false
  if (value !== undefined) this.returnValue = value
  this.dispatchEvent(new Event('close'))
}

globalThis.ResizeObserver ??= class {
  observe() {}
  unobserve() {}
  disconnect() {}
}

globalThis.matchMedia ??= (media: string) =>
  ({
    media,
    matches: false,
    onchange: null,
    addEventListener() {},
    removeEventListener() {},
    addListener() {},
    removeListener() {},
    dispatchEvent: () => false,
  }) satisfies MediaQueryList

Element.prototype.scrollIntoView ??= function scrollIntoView() {}
