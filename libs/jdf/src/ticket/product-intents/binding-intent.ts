import {
  children,
  inside,
  integerRangeList,
  oneOf,
  optional,
  required,
  transformMm,
  xyPair,
} from '../../codec/index.js';
import { fullElement } from '../../elements/base.js';
import { bindingMethods } from './binding-methods.js';
import { enumerationSpan, spans, stringSpan } from './span-types.js';

const { adhesiveBinding, adhesiveNote, bookCase, ...methods } = bindingMethods;

/** What is bound to what: the page of the inner product that touches the page of the outer one. */
const bindItem = fullElement('BindItem', {
  parentFolio: required('ParentFolio', xyPair),
  childFolio: optional('ChildFolio', xyPair),
  transformationMm: optional('Transformation', transformMm),
  wrapPages: optional('WrapPages', integerRangeList),
  ...spans(enumerationSpan, 'BindingType'),
  ...methods,
});

export const bindingIntent = fullElement('BindingIntent', {
  bindingOrder: optional('BindingOrder', oneOf(['Collecting', 'Gathering', 'List', 'None'])),
  ...spans(
    enumerationSpan,
    'BindingType',
    'BindingSide',
    'BindingLength',
    'BindingColor',
    'CoverColor',
    'BackCoverColor',
  ),
  ...spans(stringSpan, 'BindingColorDetails', 'CoverColorDetails', 'BackCoverColorDetails'),
  bindItems: inside('BindList', children(bindItem)),
  ...methods,
  adhesiveNote,
  /** Until version 1.0. */
  adhesiveBinding,
  bookCase,
});
