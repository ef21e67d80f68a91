import { boolean, child, elementCodec, optional, someOf, text, tokens } from '../codec/index.js';
import { content, nothing } from '../jmf/content.js';

const methods = elementCodec('SubmissionMethods', {
  urlSchemes: optional('URLSchemes', tokens),
  packaging: optional('Packaging', someOf(['MIME', 'None'])),
  hotFolder: optional('HotFolder', text),
  file: optional('File', boolean),
  httpGet: optional('HttpGet', boolean),
  mime: optional('MIME', boolean),
});

export const submissionMethods = {
  QuerySubmissionMethods: nothing,
  ResponseSubmissionMethods: content({ methods: child(methods) }),
};
