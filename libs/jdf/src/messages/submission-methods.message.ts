import { boolean, child, optional, someOf, text, tokens } from '../codec/index.js';
import { fullElement } from '../elements/base.js';
import { content, nothing } from '../jmf/content.js';

const methods = fullElement('SubmissionMethods', {
  urlSchemes: optional('URLSchemes', tokens),
  packaging: optional('Packaging', someOf(['MIME', 'None'])),
  hotFolder: optional('HotFolder', text),
  file: optional('File', boolean),
  httpGet: optional('HttpGet', boolean),
  mime: optional('MIME', boolean),
});

/** How tickets can be submitted: by which addresses, folders and packages. */
export const submissionMethods = {
  QuerySubmissionMethods: nothing,
  ResponseSubmissionMethods: content({ methods: child(methods) }),
};
