/** Opens the browser's own print dialog for the page as it stands. */
export const printPage = (): void => window.print()
