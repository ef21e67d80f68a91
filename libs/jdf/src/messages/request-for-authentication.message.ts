import { child, children, oneOf, optional, text, textChild } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { part } from '../elements/part.js';
import { content, only, signal } from '../jmf/content.js';

/** The role that the sender of the certificate has in the connection. */
const authenticationType = optional('AuthenticationType', oneOf(['AsClient', 'AsServer']));

const command = fullElement('AuthenticationCmdParams', {
  authenticationType,
  reason: optional(
    'Reason',
    oneOf([
      'InitiateConnection',
      'ClientCertificateExpired',
      'ServerCertificateExpired',
      'ClientHostnameMismatch',
      'ServerHostnameMismatch',
      'ClientCertificateRevoked',
      'ServerCertificateRevoked',
      'Other',
    ]),
  ),
  reasonDetails: optional('ReasonDetails', text),
  secureUrl: optional('SecureURL', text),
  /** PEM. */
  certificate: textChild('Certificate'),
  parts: children(part),
});

const query = fullElement('AuthenticationQuParams', { authenticationType });

const answer = fullElement('AuthenticationResp', {
  secureUrl: optional('SecureURL', text),
  certificate: textChild('Certificate'),
});

/** Exchange of certificates between two that want to speak over a secured line. */
export const requestForAuthentication = {
  /** Whether an earlier request has been granted. */
  QueryRequestForAuthentication: only(query),
  CommandRequestForAuthentication: only(command),
  SignalRequestForAuthentication: signal({ query: child(query), authentication: child(answer) }),
  ResponseRequestForAuthentication: content({ authentication: child(answer) }),
};
