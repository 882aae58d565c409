import type { Browser } from 'playwright-core'

export declare function installedBrowser(): string | null
export declare function launchBrowser(): Promise<Browser>
