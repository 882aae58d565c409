export declare const MOST_KB_UNTIL_LIST: number
export declare const MOST_KB_MORE_FOR_COMMISSION: number
export declare function gzipBytes(body: Uint8Array | string): number
export declare function listScripts(): { readonly name: string; readonly gzipBytes: number }[]
