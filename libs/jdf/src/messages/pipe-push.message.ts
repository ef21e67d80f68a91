import { pipeParams } from '../elements/pipe-params.js';
import { only } from '../jmf/content.js';
import { pipeAnswer } from '../jmf/pipe-answer.js';

/** The producer of a pipe says that more of the resource is there. */
export const pipePush = {
  CommandPipePush: only(pipeParams),
  ResponsePipePush: pipeAnswer,
  AcknowledgePipePush: pipeAnswer,
  RegistrationPipePush: only(pipeParams),
};
