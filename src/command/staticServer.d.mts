import type { Server } from 'node:http'

export declare function makeStaticServer(folder: string, under?: string): Server
export declare function fileFor(folder: string, under: string, url: string): Promise<string | null>
