import { child, oneOf, optional } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { deviceInfo } from '../elements/device-info.js';
import { flushQueueParams } from '../elements/flush.js';
import { queue } from '../elements/queue.js';
import { answerFilter, content, together } from '../jmf/content.js';

const params = fullElement('ShutDownCmdParams', {
  shutDownType: optional('ShutDownType', oneOf(['StandBy', 'Full'])),
  /** Which entries shall be removed first. */
  flush: child(flushQueueParams),
});

const answered = content({ device: child(deviceInfo), queue: child(queue) });

/** Switches a device or its parts off or to rest. Answered with how it stands. */
export const shutDown = {
  CommandShutDown: together(params, answerFilter),
  ResponseShutDown: answered,
  AcknowledgeShutDown: answered,
};
