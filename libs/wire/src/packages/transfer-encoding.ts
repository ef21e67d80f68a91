const CR = 0x0d;
const LF = 0x0a;
const EQUALS = 0x3d;

/**
 * Bytes of a part in the encoding that its header names, or null when they do not follow it (RFC 2045 section 6). The
 * standard asks for base64 and recommends 8bit and binary; quoted-printable is read because mail software writes it.
 */
export function decodePart(bytes: Uint8Array, encoding: string): Uint8Array | null {
  switch (encoding.trim().toLowerCase()) {
    case '':
    case '7bit':
    case '8bit':
    case 'binary':
      return bytes;
    case 'base64':
      return decodeBase64(bytes);
    case 'quoted-printable':
      return decodeQuotedPrintable(bytes);
    default:
      return null;
  }
}

/** Strict, because Node's own reader skips whatever it does not understand and would pass half a ticket. */
function decodeBase64(bytes: Uint8Array): Uint8Array | null {
  const text = Buffer.from(bytes)
    .toString('latin1')
    .replace(/[\r\n\t ]+/g, '');
  if (text.length % 4 !== 0 || !/^[A-Za-z0-9+/]*={0,2}$/.test(text)) return null;
  return Buffer.from(text, 'base64');
}

function decodeQuotedPrintable(bytes: Uint8Array): Uint8Array | null {
  const out: number[] = [];
  for (let i = 0; i < bytes.length; i++) {
    const byte = bytes[i]!;
    if (byte !== EQUALS) {
      out.push(byte);
      continue;
    }
    if (bytes[i + 1] === LF) {
      i += 1;
    } else if (bytes[i + 1] === CR && bytes[i + 2] === LF) {
      i += 2;
    } else {
      const pair = Buffer.from(bytes.subarray(i + 1, i + 3)).toString('latin1');
      if (!/^[0-9A-Fa-f]{2}$/.test(pair)) return null;
      out.push(Number.parseInt(pair, 16));
      i += 2;
    }
  }
  return Uint8Array.from(out);
}

/** Base64 in lines of 76 characters (RFC 2045 section 6.8), as a part's body. */
export function encodeBase64(bytes: Uint8Array): Uint8Array {
  const text = Buffer.from(bytes).toString('base64');
  return Buffer.from(text.replace(/(.{76})(?=.)/g, '$1\r\n'), 'latin1');
}
