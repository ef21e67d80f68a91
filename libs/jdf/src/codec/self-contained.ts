import { JDF_NAMESPACE, withAttributes, type XmlElement, XSI_NAMESPACE } from '../xml/index.js';

/**
 * The element with declarations for all prefixes it uses and does not declare, so that it means the same inside a
 * document written here: one whose default namespace is the standard's and that declares xsi. Source: Namespaces in
 * XML 1.0, section 6.
 */
export function selfContained(el: XmlElement): XmlElement {
  const needed = new Map<string, string>();
  collect(el, new Set(['xml', 'xmlns']), needed);
  if (needed.get('') === JDF_NAMESPACE) needed.delete('');
  if (needed.get('xsi') === XSI_NAMESPACE) needed.delete('xsi');
  if (needed.size === 0) return el;
  const declarations = [...needed].map(([prefix, uri]) => [prefix === '' ? 'xmlns' : `xmlns:${prefix}`, uri]);
  return withAttributes(el, Object.fromEntries(declarations) as Record<string, string>);
}

/** Prefixes used below that nothing around them declares, each with the namespace it stands for. */
function collect(el: XmlElement, declared: ReadonlySet<string>, needed: Map<string, string>): void {
  const own = el.attributes.flatMap(({ name, prefix, local }) =>
    name === 'xmlns' ? [''] : prefix === 'xmlns' ? [local] : [],
  );
  const known = own.length === 0 ? declared : new Set([...declared, ...own]);
  const use = (prefix: string, uri: string): void => {
    if (!known.has(prefix) && !needed.has(prefix)) needed.set(prefix, uri);
  };
  use(el.prefix, el.uri);
  for (const { name, prefix, uri } of el.attributes) {
    if (prefix !== '' && name !== 'xmlns') use(prefix, uri);
  }
  for (const child of el.children) {
    if (child.kind === 'element') collect(child, known, needed);
  }
}
