import { type Call, NoServer, text } from './command.js';

const DEFAULT_SERVER = 'http://127.0.0.1:7420';

export interface Answer {
  readonly status: number;
  readonly headers: Headers;
  readonly text: string;
  json<T>(): T;
}

/** The server that a command speaks to. */
export class Client {
  readonly base: string;
  readonly #headers: Record<string, string>;

  constructor(call: Call) {
    this.base = (text(call, 'server') ?? call.env.SIDELAY_SERVER ?? DEFAULT_SERVER).replace(/\/$/, '');
    const token = text(call, 'token') ?? call.env.SIDELAY_TOKEN;
    this.#headers = token === undefined ? {} : { authorization: `Bearer ${token}` };
  }

  async open(path: string, init: RequestInit = {}): Promise<Response> {
    try {
      return await fetch(`${this.base}${path}`, { ...init, headers: { ...this.#headers, ...init.headers } });
    } catch (cause) {
      if (init.signal?.aborted) throw cause;
      throw new NoServer(
        `No Sidelay answers at ${this.base}. Start one with \`npm start\`, or name it with --server.`,
      );
    }
  }

  async ask(path: string, init: RequestInit = {}): Promise<Answer> {
    const response = await this.open(path, init);
    const body = await response.text();
    return {
      status: response.status,
      headers: response.headers,
      text: body,
      json: <T>() => JSON.parse(body) as T,
    };
  }
}

/** What a refused request says, for people. */
export function refusal(answer: Answer): string {
  try {
    const { detail, remedy } = answer.json<{ detail?: string; remedy?: string }>();
    return [detail ?? `The server answered ${answer.status}.`, remedy ?? ''].join(' ').trim();
  } catch {
    return `The server answered ${answer.status}.`;
  }
}
