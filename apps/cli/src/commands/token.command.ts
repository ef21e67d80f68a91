import { openTokens } from '#apps/server';
import type { Token } from '#libs/flow';
import { isoTime } from '#libs/kernel';
import { asJson, number, text } from '../args.js';
import { type Call, type Command, EXIT, WrongUse } from '../command.js';
import { sayJson } from '../output.js';

type Desk = Awaited<ReturnType<typeof openTokens>>;

export const token: Command = {
  name: 'token',
  usage: 'create --name NAME [--kind person|device] [--days N] | list | revoke ID   [--json]',
  summary: 'Tokens for people and machines that are not on the server itself. A secret is shown once.',
  options: { ...asJson, name: { type: 'string' }, kind: { type: 'string' }, days: { type: 'string' } },
  takes: [1, 2],
  async run(call) {
    const [verb] = call.args;
    const act = verb === 'create' ? create : verb === 'list' ? list : verb === 'revoke' ? revoke : null;
    if (act === null) throw new WrongUse(`token knows create, list and revoke, not "${verb}".`);
    // What is wrong in the asking is said before a database is opened.
    if (verb === 'create') wish(call);
    if (verb === 'revoke') idOf(call);
    if (verb !== 'revoke' && call.args[1] !== undefined)
      throw new WrongUse(`token ${verb} does not take "${call.args[1]}".`);
    const desk = await openTokens(call.env);
    try {
      return await act(call, desk);
    } finally {
      await desk.close();
    }
  },
};

function wish(call: Call): { kind: Token['kind']; name: string; days: number | null } {
  const name = text(call, 'name');
  const kind = text(call, 'kind') ?? 'person';
  const days = number(call, 'days') ?? null;
  if (name === undefined)
    throw new WrongUse('token create needs --name: whose it is, or the DeviceID it speaks for.');
  if (kind !== 'person' && kind !== 'device') throw new WrongUse('--kind is person or device.');
  if (days !== null && !(days > 0)) throw new WrongUse('--days must be more than 0.');
  return { kind, name, days };
}

async function create(call: Call, desk: Desk): Promise<number> {
  const { token: made, secret } = await desk.create(wish(call));
  if (call.values.json) sayJson(call, { ...viewOf(made), secret });
  else {
    call.err(`Token ${made.id} for ${made.kind} ${made.name}. It is shown now and never again:`);
    call.out(secret);
  }
  return EXIT.done;
}

async function list(call: Call, desk: Desk): Promise<number> {
  const tokens = await desk.list();
  if (call.values.json) sayJson(call, tokens.map(viewOf));
  else for (const row of tokens) call.out(lineOf(row));
  return EXIT.done;
}

/** Times as everywhere outside: RFC 3339 UTC. */
function viewOf({ createdAt, expiresAt, revokedAt, lastUsedAt, ...rest }: Token): Record<string, unknown> {
  const time = (at: number | null): string | null => (at === null ? null : isoTime(at));
  return {
    ...rest,
    createdAt: isoTime(createdAt),
    expiresAt: time(expiresAt),
    revokedAt: time(revokedAt),
    lastUsedAt: time(lastUsedAt),
  };
}

function lineOf({ id, kind, name, createdAt, expiresAt, revokedAt, lastUsedAt }: Token): string {
  const state =
    revokedAt !== null
      ? `revoked ${isoTime(revokedAt)}`
      : expiresAt === null
        ? 'no end'
        : `until ${isoTime(expiresAt)}`;
  const used = lastUsedAt === null ? 'never used' : `last used ${isoTime(lastUsedAt)}`;
  return `${id}  ${kind.padEnd(6)} ${name}  made ${isoTime(createdAt)}, ${state}, ${used}`;
}

async function revoke(call: Call, desk: Desk): Promise<number> {
  const id = idOf(call);
  if (await desk.revoke(id)) {
    if (call.values.json) sayJson(call, { id, revoked: true });
    else call.out(`Token ${id} counts no more.`);
    return EXIT.done;
  }
  call.err(`There is no token ${id} that still counts.`);
  return EXIT.faults;
}

function idOf(call: Call): string {
  const id = call.args[1];
  if (id === undefined) throw new WrongUse('token revoke needs the ID that token list shows.');
  return id;
}
