/**
 * Every official sample of both generations, in every encoding and with both line ends, through our reader and writer.
 * The outside judge of equality is libxml2's canonical form (xmllint --c14n).
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { encodeXml, type XmlDocument, type XmlElement, type XmlNode } from '#libs/jdf';
import { parsedXml } from '../kit/value-in.js';
import { standardsFolder } from './samples.js';

const paths = (
  JSON.parse(readFileSync(join(standardsFolder(), 'samples.json'), 'utf8')) as { path: string }[]
).map(({ path }) => path);

const withEncoding = (text: string, encoding: string): string =>
  `<?xml version="1.0" encoding="${encoding}"?>${text.replace(/^\s*<\?xml\s[^>]*\?>/, '')}`;

function utf16(text: string, little: boolean): Uint8Array {
  const buffer = Buffer.from(`\ufeff${text}`, 'utf16le');
  return new Uint8Array(little ? buffer : buffer.swap16());
}

/** The sample in other clothes; ISO-8859-1 only where its characters are there. */
function variantsOf(bytes: Uint8Array): Record<string, Uint8Array> {
  const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  const lines = text.replace(/\r\n?/g, '\n');
  const latin1 = !/[^\0-\u00ff]/.test(text);
  return {
    'as it is': bytes,
    'UTF-8 with a mark': new TextEncoder().encode(`\ufeff${withEncoding(text, 'UTF-8')}`),
    'UTF-16, little end first': utf16(withEncoding(text, 'UTF-16'), true),
    'UTF-16, big end first': utf16(withEncoding(text, 'UTF-16'), false),
    'line feeds': new TextEncoder().encode(lines),
    'carriage returns and line feeds': new TextEncoder().encode(lines.replaceAll('\n', '\r\n')),
    ...(latin1 && { 'ISO-8859-1': new Uint8Array(Buffer.from(withEncoding(text, 'ISO-8859-1'), 'latin1')) }),
  };
}

/** Names, namespaces, values and order, without layout and lines. */
function content(node: XmlNode): unknown {
  if (node.kind !== 'element') return { ...node, source: undefined };
  const { name, uri, attributes, children } = node;
  return { name, uri, attributes, children: children.map(content) };
}

/** As if made here: nothing remembers how it was written. */
function forgetful(node: XmlNode): XmlNode {
  const { source: _, ...rest } = node;
  return rest.kind === 'element' ? { ...rest, children: rest.children.map(forgetful) } : rest;
}

describe('every sample', () => {
  it('is there, of both generations', () => {
    expect(paths.filter((path) => path.startsWith('jdf/'))).toHaveLength(161);
    expect(paths.filter((path) => path.startsWith('xjdf/')).length).toBeGreaterThan(50);
  });

  it.each(paths)(
    '%s comes back byte for byte in every encoding and with both line ends, and is one document',
    (path) => {
      const bytes = new Uint8Array(readFileSync(join(standardsFolder(), path)));
      const expected = JSON.stringify(content(parsedXml(bytes).root));
      for (const [what, variant] of Object.entries(variantsOf(bytes))) {
        const doc = parsedXml(variant);
        expect([what, Buffer.from(encodeXml(doc)).equals(Buffer.from(variant))]).toEqual([what, true]);
        expect([what, JSON.stringify(content(doc.root)) === expected]).toEqual([what, true]);
      }
    },
  );

  it('is the same by its canonical form when every tag of it is written anew', () => {
    const folder = mkdtempSync(join(tmpdir(), 'sidelay-c14n-'));
    try {
      const [before, after]: [string[], string[]] = [[], []];
      paths.forEach((path, i) => {
        // The canonical form knows no relative namespace names, which some samples have.
        const text = readFileSync(join(standardsFolder(), path), 'utf8');
        const absolute = text.replace(
          /(\sxmlns(?::[\w.-]+)?=["'])(?!\w+:)([^"']+)/g,
          (_, before: string, name: string) => `${before}urn:x:${name.replaceAll(' ', '-')}`,
        );
        const bytes = new TextEncoder().encode(absolute);
        const doc = parsedXml(bytes);
        const anew: XmlDocument = { ...doc, root: forgetful(doc.root) as XmlElement };
        const between = `<sample n="${i}"/>`;
        for (const [list, name, file] of [
          [before, `a${i}`, bytes],
          [after, `b${i}`, encodeXml(anew)],
        ] as const) {
          writeFileSync(join(folder, name), file);
          writeFileSync(join(folder, `${name}.end`), between);
          list.push(name, `${name}.end`);
        }
      });
      const canonical = (names: readonly string[]): string => {
        const run = spawnSync('xmllint', ['--nonet', '--c14n', ...names], {
          ...{ cwd: folder, encoding: 'utf8', maxBuffer: 256 * 1024 * 1024 },
        });
        if (run.status !== 0) throw new Error(run.stderr);
        return run.stdout;
      };
      const [original, ours] = [canonical(before), canonical(after)];
      expect(original.split('<sample n=')).toHaveLength(paths.length + 1);
      const split = (text: string): string[] => text.split(/<sample n="\d+"><\/sample>/);
      const differing = split(original).flatMap((text, i) => (text === split(ours)[i] ? [] : [paths[i]]));
      expect(differing).toEqual([]);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});
