import { attributeOf, firstChild } from '../../xml/index.js';
import { isReturnCode } from '../return-codes.js';
import { type MessageCheck, numberOf } from './message-check.js';

/**
 * JMF Response ReturnCode: a ReturnCode is one of the standard's ranges, and where it is not 0 a person
 * is told why. Source of the ranges: JDF 1.4 specification, appendix D.
 */
export const returnCodesKnown: MessageCheck = {
  number: 24,
  name: 'returnCodes',
  run({ messages }, findings) {
    for (const { element } of messages) {
      const code = numberOf(element, 'ReturnCode');
      if (code === undefined || code === 0) continue;
      if (!isReturnCode(code)) {
        const hint = 'Use a code of the standard: 0 to 399.';
        const stated = attributeOf(element, 'ReturnCode');
        findings.warning('JMF_PARAMETER', element, `ReturnCode="${stated}" means nothing.`, hint);
      }
      if (firstChild(element, 'Notification') === undefined) {
        const hint = 'Add a Notification with a Comment in words.';
        findings.warning('JMF_CONTENT', element, `Why the ReturnCode is ${code} is not said.`, hint);
      }
    }
  },
};
