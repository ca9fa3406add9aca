const encoder = new TextEncoder();

/**
 * SHA-256 of a text in UTF-8, as 64 hexadecimal digits, made aside by the engine: what is kept can be megabytes.
 * @throws where a browser makes none, over a connection that is not secure
 */
export async function sha256(text: string): Promise<string> {
  const digest = await globalThis.crypto.subtle.digest('SHA-256', encoder.encode(text));
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('');
}
