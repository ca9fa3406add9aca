/**
 * SHA-256 as FIPS 180-4 describes it. It is here because a check can't wait: the digest that a browser offers comes later,
 * and only over a connection that is secure.
 */

/** The primes 2 to 311, whose roots give the constants. */
const primes: readonly number[] = firstPrimes(64);

/** The first 32 bits of the fraction of a root. */
const fraction = (root: number): number => ((root - Math.floor(root)) * 2 ** 32) | 0;

const constants = Int32Array.from(primes, (prime) => fraction(Math.cbrt(prime)));
const initial: readonly number[] = primes.slice(0, 8).map((prime) => fraction(Math.sqrt(prime)));

const encoder = new TextEncoder();

/** SHA-256 of a text in UTF-8, as 64 hexadecimal digits; half of a character counts as a replacement character. */
export function sha256(text: string): string {
  const blocks = padded(encoder.encode(text));
  const state = Int32Array.from(initial);
  const words = new Int32Array(64);
  for (let at = 0; at < blocks.byteLength; at += 64) {
    for (let index = 0; index < 16; index++) words[index] = blocks.getInt32(at + index * 4);
    compress(state, schedule(words));
  }
  return Array.from(state, (word) => (word >>> 0).toString(16).padStart(8, '0')).join('');
}

/** The bytes, a one, zeros, and their count of bits, in blocks of 64 bytes. */
function padded(bytes: Uint8Array): DataView {
  const blocks = new Uint8Array(Math.ceil((bytes.length + 9) / 64) * 64);
  blocks.set(bytes);
  blocks[bytes.length] = 0x80;
  const view = new DataView(blocks.buffer);
  view.setBigUint64(blocks.length - 8, BigInt(bytes.length) * 8n);
  return view;
}

const rotated = (word: number, by: number): number => (word >>> by) | (word << (32 - by));

/** Fills the words 16 to 63 from those before them. */
function schedule(words: Int32Array): Int32Array {
  for (let index = 16; index < 64; index++) {
    const near = words[index - 2]!;
    const far = words[index - 15]!;
    const small = rotated(far, 7) ^ rotated(far, 18) ^ (far >>> 3);
    const large = rotated(near, 17) ^ rotated(near, 19) ^ (near >>> 10);
    words[index] = large + words[index - 7]! + small + words[index - 16]!;
  }
  return words;
}

function compress(state: Int32Array, words: Int32Array): void {
  let [a, b, c, d] = [state[0]!, state[1]!, state[2]!, state[3]!];
  let [e, f, g, h] = [state[4]!, state[5]!, state[6]!, state[7]!];
  for (let round = 0; round < 64; round++) {
    const chosen = (e & f) ^ (~e & g);
    const first = h + (rotated(e, 6) ^ rotated(e, 11) ^ rotated(e, 25)) + chosen;
    const one = (first + constants[round]! + words[round]!) | 0;
    const most = (a & b) ^ (a & c) ^ (b & c);
    const two = ((rotated(a, 2) ^ rotated(a, 13) ^ rotated(a, 22)) + most) | 0;
    [h, g, f, e] = [g, f, e, (d + one) | 0];
    [d, c, b, a] = [c, b, a, (one + two) | 0];
  }
  for (const [index, word] of [a, b, c, d, e, f, g, h].entries()) state[index] = state[index]! + word;
}

function firstPrimes(count: number): readonly number[] {
  const found: number[] = [];
  for (let candidate = 2; found.length < count; candidate++)
    if (found.every((prime) => candidate % prime !== 0)) found.push(candidate);
  return found;
}
