import type { XmlElement } from '../../xml/index.js';
import type { Direction } from '../translate.js';
import type { Ticket } from './ticket.js';
export function olderAudits(_ticket: Ticket, _direction: Direction): XmlElement | undefined {
  return undefined;
}
