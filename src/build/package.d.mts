export function pack(folder?: string): Promise<string>;
