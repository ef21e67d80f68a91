import { type Instant, isoTime } from '#libs/kernel';

/** Who spawns or merges, and when, for the audits. */
export interface Act {
  readonly at: Instant;
  readonly agent: { readonly name: string; readonly version?: string };
  /** Where the ticket that leaves is put, or was got from. */
  readonly url?: string;
}

/** The attributes that all audits of an act share. */
export function auditStamp({ at, agent, url }: Act): Record<string, string | undefined> {
  return { TimeStamp: isoTime(at), AgentName: agent.name, AgentVersion: agent.version, URL: url };
}
