import { child, children, inside, oneOf, optional, tokens } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { device } from '../elements/device.js';
import { deviceInfo } from '../elements/device-info.js';
import { content, perhaps, signal } from '../jmf/content.js';

const filter = fullElement('DeviceFilter', {
  deviceDetails: optional(
    'DeviceDetails',
    oneOf(['None', 'Brief', 'Modules', 'Details', 'NamedFeature', 'Capability', 'Full']),
  ),
  /** Languages that texts are wanted in, or All. */
  localization: optional('Localization', tokens),
  devices: children(device),
});

const devices = inside('DeviceList', children(deviceInfo));

/** Which devices a controller knows, with their status and, where asked for, their details. */
export const knownDevices = {
  QueryKnownDevices: perhaps(filter, {}),
  SignalKnownDevices: signal({ filter: child(filter), devices }),
  ResponseKnownDevices: content({ devices }),
};
