/** True while a question is open on the page, which a reload would close with whatever was typed into it. */
export const hasOpenDialog = (): boolean => document.querySelector('dialog[open]') !== null

/** Loads the page anew. */
export const reloadPage = (): void => window.location.reload()
