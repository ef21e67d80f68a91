import type { PartKeys } from '../../elements/part.js';
import type { XmlDocument, XmlElement } from '../../xml/index.js';
import { Ids } from '../ids.js';
import { Ledger } from '../ledger.js';

/** What an ID of the newer document leads to in the older one. */
export interface Target {
  /** Name of the resource, as in links and references. */
  readonly name: string;
  readonly id: string;
  readonly keys: PartKeys;
}

/** A conversion to the older generation under way. */
export class Ticket {
  readonly doc: XmlDocument;
  readonly ledger: Ledger;
  readonly ids: Ids;
  readonly targets = new Map<string, Target>();
  /** Binding signatures by the name that positions have for them. */
  readonly signatures = new Map<string, Target>();
  /** Resources of the pool, in the order in which they are written. */
  readonly pool: XmlElement[] = [];

  constructor(doc: XmlDocument) {
    this.doc = doc;
    this.ledger = new Ledger(doc);
    this.ids = new Ids(doc);
  }

  /** When the message or audit that is being written was sent. */
  time: string | undefined;

  /** What a reference leads to in the older generation; undefined where it leads nowhere. */
  target(id: string): Target | undefined {
    return this.targets.get(id);
  }
}
