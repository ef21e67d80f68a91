import { text } from './args.js';
import { type Call, NoServer, WrongUse } from './command.js';

const DEFAULT_SERVER = 'http://127.0.0.1:7420';

export interface Answer {
  readonly status: number;
  readonly headers: Headers;
  readonly bytes: Uint8Array;
  /** Throws NoServer when it is no JSON: whatever listens there is not this product. */
  json<T>(): T;
}

/**
 * The server that a command speaks to. What says that there is no server for us is thrown: NoServer when nothing answers,
 * the answer breaks off or the server is in trouble (5xx), WrongUse when it wants a token (401, 403). All else is the
 * command's to judge.
 */
export class Client {
  readonly base: string;
  readonly #headers: Readonly<Record<string, string>>;

  constructor(call: Pick<Call, 'values' | 'env'>) {
    const server = text(call, 'server') ?? call.env.SIDELAY_SERVER ?? DEFAULT_SERVER;
    if (!/^https?:\/\/./.test(server) || !URL.canParse(server)) {
      throw new WrongUse(`"${server}" is no address of a server; one looks like ${DEFAULT_SERVER}.`);
    }
    this.base = server.replace(/\/+$/, '');
    const token = text(call, 'token') ?? call.env.SIDELAY_TOKEN;
    this.#headers = token === undefined || token === '' ? {} : { authorization: `Bearer ${token}` };
  }

  /** An answer whose body is still to be read. */
  async open(path: string, init: RequestInit = {}): Promise<Response> {
    let response: Response;
    try {
      response = await fetch(`${this.base}${path}`, {
        ...init,
        headers: { ...this.#headers, ...(init.headers as Record<string, string> | undefined) },
      });
    } catch {
      throw new NoServer(
        `No Sidelay answers at ${this.base}. Start one with \`npm start\`, or name it with --server.`,
      );
    }
    const { status } = response;
    if (status >= 500 || status === 401 || status === 403) {
      const said = refusal(await this.#read(response));
      throw status >= 500 ? new NoServer(said) : new WrongUse(said);
    }
    return response;
  }

  async ask(path: string, init: RequestInit = {}): Promise<Answer> {
    return this.#read(await this.open(path, init));
  }

  async #read(response: Response): Promise<Answer> {
    let bytes: Uint8Array;
    try {
      bytes = new Uint8Array(await response.arrayBuffer());
    } catch {
      throw new NoServer(`The answer of ${this.base} broke off.`);
    }
    return {
      status: response.status,
      headers: response.headers,
      bytes,
      json: <T>(): T => {
        try {
          return JSON.parse(new TextDecoder().decode(bytes)) as T;
        } catch {
          throw new NoServer(`What answers at ${this.base} is not Sidelay.`);
        }
      },
    };
  }
}

/** What a refused request says, for people (RFC 9457: detail; remedy is ours). */
export function refusal(answer: Answer): string {
  const bare = `The server answered ${answer.status}.`;
  try {
    const { detail, remedy } = answer.json<{ detail?: string; remedy?: string }>();
    return [detail ?? bare, remedy ?? ''].join(' ').trim();
  } catch (cause) {
    if (cause instanceof NoServer) return bare;
    throw cause;
  }
}
