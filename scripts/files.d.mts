export declare function listFiles(root: string, folder?: string): string[];
