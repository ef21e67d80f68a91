import { done, error, type Result, refuse } from '#libs/kernel';
import { JDF_NAMESPACE, XJDF_NAMESPACE, type XmlDocument } from '../xml/index.js';

export type DocumentKind = 'jdf' | 'jmf' | 'xjdf' | 'xjmf';

const KINDS: Readonly<Record<string, { readonly kind: DocumentKind; readonly uri: string }>> = {
  JDF: { kind: 'jdf', uri: JDF_NAMESPACE },
  JMF: { kind: 'jmf', uri: JDF_NAMESPACE },
  XJDF: { kind: 'xjdf', uri: XJDF_NAMESPACE },
  XJMF: { kind: 'xjmf', uri: XJDF_NAMESPACE },
};

/** Which of the standard's documents this is, by its root. Errors: XML_NAMESPACE, KIND_UNKNOWN. */
export function kindOf(doc: XmlDocument): Result<DocumentKind> {
  const { root } = doc;
  const where = { line: root.line || null, path: `/${root.name}` };
  const known = Object.hasOwn(KINDS, root.local) ? KINDS[root.local] : undefined;
  if (known === undefined) {
    return refuse(error('KIND_UNKNOWN', `${root.name} is no document of the standard.`, where));
  }
  if (root.uri === known.uri) return done(known.kind);
  const stated = root.uri === '' ? 'no namespace' : `the namespace "${root.uri}"`;
  const hint = `The namespace of ${root.local} is "${known.uri}".`;
  return refuse(error('XML_NAMESPACE', `${root.name} is in ${stated}.`, { ...where, hint }));
}
