import { inflateRawSync } from 'node:zlib';

/** The files of a zip archive: their names, and their content. */
export function unzip(archive: Buffer): ReadonlyMap<string, Buffer> {
  const end = archive.lastIndexOf(Buffer.from([0x50, 0x4b, 5, 6]));
  const files = new Map<string, Buffer>();
  let at = archive.readUInt32LE(end + 16);
  for (let left = archive.readUInt16LE(end + 10); left > 0; left -= 1) {
    const nameLength = archive.readUInt16LE(at + 28);
    const name = archive.toString('utf8', at + 46, at + 46 + nameLength);
    files.set(name, contentOf(archive, at));
    at += 46 + nameLength + archive.readUInt16LE(at + 30) + archive.readUInt16LE(at + 32);
  }
  return files;
}

function contentOf(archive: Buffer, entry: number): Buffer {
  const local = archive.readUInt32LE(entry + 42);
  const start = local + 30 + archive.readUInt16LE(local + 26) + archive.readUInt16LE(local + 28);
  const content = archive.subarray(start, start + archive.readUInt32LE(entry + 20));
  return archive.readUInt16LE(entry + 10) === 0 ? content : inflateRawSync(content);
}
