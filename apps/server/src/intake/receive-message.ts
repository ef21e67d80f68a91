import { type EnginePorts, receiveJmf, refusalJmf } from '#libs/flow';
import { parseXmlStream, type XmlLimits } from '#libs/jdf';
import { error, type Problem } from '#libs/kernel';
import { kindOfPart, type Package, packageKind, readPackage } from '#libs/wire';
import type { DocumentDoor } from './fetch-document.js';
import { inTurns } from './in-turns.js';

const ACCEPTED =
  /^(application\/vnd\.cip4-x?jmf\+xml|(text|application)\/xml|multipart\/related|application\/(zip|octet-stream)|text\/plain)\b/i;

/** What goes back: an HTTP status and JMF text, empty where there is nothing to say. */
export interface MessageAnswer {
  readonly status: number;
  readonly body: string;
}

/**
 * One JMF document or package, as bytes. HTTP 200 also for refusals; 400 for what is no message at all, 415 for a type
 * that is none. Limits that are left out have their usual value.
 */
export async function receiveMessage(
  ports: EnginePorts,
  documents: DocumentDoor,
  bytes: Uint8Array,
  contentType: string,
  tokenDevice: string | null,
  limits: Partial<XmlLimits>,
): Promise<MessageAnswer> {
  const refuse = (
    status: number,
    problem: Pick<Problem, 'code' | 'message' | 'line' | 'path'>,
  ): MessageAnswer => {
    const where = [problem.line === null ? '' : `line ${problem.line}`, problem.path ?? ''].filter(
      (part) => part !== '',
    );
    const text = where.length === 0 ? problem.message : `${problem.message} (${where.join(', ')})`;
    return { status, body: refusalJmf(ports, problem.code, text) };
  };
  if (!ACCEPTED.test(contentType)) {
    const message = `${contentType.split(';')[0]} is no message; send application/vnd.cip4-jmf+xml or multipart/related.`;
    return refuse(415, { code: 'MEDIA_TYPE', message, line: null, path: null });
  }
  const found = await messageIn(bytes, contentType);
  if ('problem' in found) return refuse(400, found.problem);
  const parsed = await parseXmlStream(inTurns(found.bytes), limits);
  if (!parsed.ok) return refuse(400, firstError(parsed.problems));
  const answer = await receiveJmf(ports, parsed.value, {
    tokenDevice,
    fetch: (url) =>
      documents.read(url, found.pack === null ? null : { pack: found.pack, bytes, contentType }),
  });
  return answer.ok ? { status: 200, body: answer.value } : refuse(200, firstError(answer.problems));
}

type MessagePart =
  | { readonly bytes: Uint8Array; readonly pack: Package | null }
  | { readonly problem: Problem };

async function messageIn(bytes: Uint8Array, contentType: string): Promise<MessagePart> {
  if (packageKind(bytes, contentType) === null) return { bytes, pack: null };
  const pack = await readPackage(bytes, contentType);
  if (!pack.ok) return { problem: firstError(pack.problems) };
  const part = pack.value.parts.find((candidate) => kindOfPart(candidate) === 'message');
  if (part !== undefined) return { bytes: part.bytes, pack: pack.value };
  return { problem: error('JMF_CONTENT', 'The package has no message in it.') };
}

function firstError(problems: readonly Problem[]): Problem {
  return problems.find((problem) => problem.severity === 'error') ?? problems[0]!;
}
