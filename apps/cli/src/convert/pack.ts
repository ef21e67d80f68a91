import { realClock, systemRandom, uuidV7Source } from '#libs/kernel';
import { gathered, type Package, type PackagePart, writeMultipart, writeZip } from '#libs/wire';

/** A package as the bytes of a file: a multipart begins with its own header, which names the boundary. */
export async function packed(
  parts: readonly PackagePart[],
  container: Package['container'],
): Promise<Uint8Array> {
  const sent = parts.map(({ bytes, ...part }) => ({ ...part, content: bytes }));
  if (container === 'zip') return gathered(writeZip(sent, realClock().now()));
  const ids = uuidV7Source(realClock(), systemRandom);
  const { contentType, body } = writeMultipart({ parts: sent, encoding: 'base64' }, ids);
  return asMultipartFile(contentType, await gathered(body));
}

/** The body of a multipart message with the header that in HTTP stands before it. */
export function asMultipartFile(contentType: string, body: Uint8Array): Uint8Array {
  return Buffer.concat([Buffer.from(`MIME-Version: 1.0\r\nContent-Type: ${contentType}\r\n\r\n`), body]);
}
