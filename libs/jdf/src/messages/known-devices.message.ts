import { children, elementCodec, inside, oneOf, optional } from '../codec/index.js';
import { device } from '../elements/device.js';
import { deviceInfo } from '../elements/device-info.js';
import { content, perhaps } from '../jmf/content.js';

const filter = elementCodec('DeviceFilter', {
  deviceDetails: optional(
    'DeviceDetails',
    oneOf(['None', 'Brief', 'Modules', 'Details', 'NamedFeature', 'Capability', 'Full']),
  ),
  devices: children(device),
});

export const knownDevices = {
  QueryKnownDevices: perhaps(filter, {}),
  ResponseKnownDevices: content({ devices: inside('DeviceList', children(deviceInfo)) }),
};
