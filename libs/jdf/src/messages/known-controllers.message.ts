import { child, children, type Of, oneOf, optional, required, someOf, text } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { content, signal } from '../jmf/content.js';

const urlTypes = ['JDFError', 'JDFInput', 'JDFOutput', 'JMF', 'SecureJMF'] as const;

const filter = fullElement('ControllerFilter', {
  controllerId: optional('ControllerID', text),
  urlTypes: optional('URLTypes', someOf(urlTypes)),
});

const controller = fullElement('JDFController', {
  controllerId: optional('ControllerID', text),
  url: required('URL', text),
  urlType: optional('URLType', oneOf(urlTypes)),
});
export type Controller = Of<typeof controller>;

/** Which controllers a controller knows, with the addresses that they take messages at. */
export const knownControllers = {
  QueryKnownControllers: content({ filter: child(filter) }),
  SignalKnownControllers: signal({ filter: child(filter), controllers: children(controller) }),
  ResponseKnownControllers: content({ controllers: children(controller) }),
};
