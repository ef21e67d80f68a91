import { child } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { deviceInfo } from '../elements/device-info.js';
import { content, perhaps, signal } from '../jmf/content.js';

const params = fullElement('WakeUpCmdParams', {});
const answered = content({ device: child(deviceInfo) });

/** Brings a device back from rest. Answered with how it stands. */
export const wakeUp = {
  CommandWakeUp: perhaps(params, {}),
  SignalWakeUp: signal({ params: child(params), device: child(deviceInfo) }),
  ResponseWakeUp: answered,
  AcknowledgeWakeUp: answered,
};
