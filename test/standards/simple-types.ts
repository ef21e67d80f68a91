/** The simple types of an official schema, and what xmllint says of values of them. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import * as jdf from '#libs/jdf';
import { XS } from '../kit/read-schema.js';
import { parsedXml } from '../kit/value-in.js';
import { standardsFolder } from './samples.js';

/** Where each generation keeps its simple types. */
const places = {
  jdf: { folder: 'jdf/schema', types: 'JDFTypes.xsd', namespace: 'http://www.CIP4.org/JDFSchema_1_7_Types' },
  xjdf: { folder: 'xjdf/schema', types: 'xjdf.xsd', namespace: jdf.XJDF_NAMESPACE },
} as const;
export type Generation = keyof typeof places;

export function schemaRoot(generation: Generation, file: string): jdf.XmlElement {
  const bytes = readFileSync(join(standardsFolder(), places[generation].folder, file));
  return parsedXml(new Uint8Array(bytes)).root;
}

export interface SimpleType {
  /** Its own name, or that of the attribute that it is written in. */
  readonly name: string;
  readonly named: boolean;
  /** Names of a closed list. */
  readonly enumeration: boolean;
  /** What it is a list of. */
  readonly item: string | undefined;
  readonly el: jdf.XmlElement;
}

/** All simple types in files of a schema, and those that are written in an attribute of whatever element. */
export function simpleTypesOf(generation: Generation, files: readonly string[]): readonly SimpleType[] {
  return files.flatMap((file) => {
    const root = schemaRoot(generation, file);
    const own = jdf.childElements(root, 'simpleType', XS).map((el) => ({ el, at: el, named: true }));
    const inAttributes = [...jdf.descendants(root)]
      .filter(({ local }) => local === 'attribute')
      .flatMap((at) => jdf.childElements(at, 'simpleType', XS).map((el) => ({ el, at, named: false })));
    return [...own, ...inAttributes].map(({ el, at, named }) => ({
      el,
      named,
      name: jdf.attributeOf(at, 'name') ?? '',
      enumeration: [...jdf.descendants(el)].some(({ local }) => local === 'enumeration'),
      item: jdf.attributeOf(jdf.firstChild(el, 'list', XS) ?? el, 'itemType'),
    }));
  });
}

/** The types that attributes name, with the prefix that they are written with. */
export function attributeTypesOf(generation: Generation, files: readonly string[]): readonly string[] {
  const named = files.flatMap((file) =>
    [...jdf.descendants(schemaRoot(generation, file))]
      .filter(({ local }) => local === 'attribute')
      .map((el) => jdf.attributeOf(el, 'type') ?? ''),
  );
  return [...new Set(named)];
}

export interface Case {
  readonly type: string;
  readonly value: string;
}

/**
 * Whether each value is of its type by the official schema: one document with one value a line, one run of xmllint.
 * `unnamed` are types that are written in an attribute of the schema.
 */
export function schemaVerdicts(
  generation: Generation,
  cases: readonly Case[],
  unnamed: readonly SimpleType[],
): readonly boolean[] {
  const { folder, types, namespace } = places[generation];
  const elements = [...new Set(cases.map(({ type }) => type))].map((type) => {
    const inline = unnamed.find(({ name }) => name === type);
    const prefixed = type.startsWith('xs:') ? type : `jdftyp:${type}`;
    const attribute =
      inline === undefined
        ? `<xs:attribute name="v" type="${prefixed}"/>`
        : `<xs:attribute name="v">${jdf.writeElement(inline.el)}</xs:attribute>`;
    return `<xs:element name="${elementName(type)}"><xs:complexType>${attribute}</xs:complexType></xs:element>`;
  });
  const schema = `<xs:schema xmlns:xs="${XS}" xmlns:jdftyp="${namespace}" xmlns="${namespace}">
<xs:import namespace="${namespace}" schemaLocation="${join(standardsFolder(), folder, types)}"/>
<xs:element name="values"><xs:complexType><xs:sequence><xs:any maxOccurs="unbounded"/></xs:sequence></xs:complexType></xs:element>
${elements.join('\n')}
</xs:schema>`;
  const lines = cases.map(({ type, value }) => `<${elementName(type)} v="${escaped(value)}"/>`);
  const document = `<values xmlns:xs="${XS}">\n${lines.join('\n')}\n</values>`;
  const wrong = wrongLines(schema, document);
  return cases.map((_, i) => !wrong.has(i + 2));
}

const elementName = (type: string): string => `of-${type.replace(':', '-')}`;

// Tabs and line ends as references, or the XML reader makes blanks of them before the schema sees them.
const escaped = (value: string): string =>
  value.replace(/[&<"\t\r\n]/g, (character) => `&#${character.codePointAt(0)};`);

function wrongLines(schema: string, document: string): ReadonlySet<number> {
  const folder = mkdtempSync(join(tmpdir(), 'sidelay-types-'));
  try {
    writeFileSync(join(folder, 'types.xsd'), schema);
    writeFileSync(join(folder, 'values.xml'), document);
    const run = spawnSync('xmllint', ['--noout', '--nonet', '--schema', 'types.xsd', 'values.xml'], {
      cwd: folder,
      encoding: 'utf8',
      maxBuffer: 256 * 1024 * 1024,
    });
    if (run.error) throw run.error;
    // 0: valid; 3: not valid. All else is no verdict: a wrong schema, a document that is no XML.
    if (run.status !== 0 && run.status !== 3) throw new Error(run.stderr.slice(0, 2000));
    const lines = [...run.stderr.matchAll(/^values\.xml:(\d+): /gm)].map((match) => Number(match[1]));
    return new Set(lines);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
