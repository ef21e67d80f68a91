import { children, oneOf, optional, required, text, tokens } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { content, nothing, signal } from '../jmf/content.js';

/** A process that a device executes, alone or with others. */
const service = fullElement('JDFService', {
  type: required('Type', text),
  types: optional('Types', tokens),
  typeOrder: optional('TypeOrder', oneOf(['Fixed', 'Unordered', 'Unrestricted'])),
  combinedMethod: optional(
    'CombinedMethod',
    oneOf(['Combined', 'CombinedProcessGroup', 'GrayBox', 'ProcessGroup', 'None']),
  ),
});

/** Which processes a device executes. Deprecated: KnownDevices tells more. */
export const knownJdfServices = {
  QueryKnownJDFServices: nothing,
  SignalKnownJDFServices: signal({ services: children(service) }),
  ResponseKnownJDFServices: content({ services: children(service) }),
};
