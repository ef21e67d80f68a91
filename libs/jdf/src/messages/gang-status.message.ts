import { child, children } from '../codec/index.js';
import { gangFilter, gangInfo } from '../elements/gang.js';
import { content, perhaps, signal } from '../jmf/content.js';

/** How full the gangs are that a device gathers. */
export const gangStatus = {
  QueryGangStatus: perhaps(gangFilter, {}),
  SignalGangStatus: signal({ filter: child(gangFilter), gangs: children(gangInfo) }),
  ResponseGangStatus: content({ gangs: children(gangInfo) }),
};
