import { child, children, oneOf, optional, tokens } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { gangFilter, gangInfo } from '../elements/gang.js';
import { queue } from '../elements/queue.js';
import { content, perhaps } from '../jmf/content.js';

const command = fullElement('GangCmdFilter', {
  gangNames: optional('GangNames', tokens),
  policy: optional('Policy', oneOf(['All', 'Optimized'])),
});

/** Gangs that are not full yet are to be executed all the same. */
export const forceGang = {
  QueryForceGang: perhaps(gangFilter, {}),
  CommandForceGang: perhaps(command, {}),
  ResponseForceGang: content({ gangs: children(gangInfo), queue: child(queue) }),
};
