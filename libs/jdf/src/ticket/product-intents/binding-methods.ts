import {
  child,
  type ElementCodec,
  elementCodec,
  type Field,
  integerOrInfinity,
  optional,
  type ValueOf,
} from '../../codec/index.js';
import { base } from '../../elements/base.js';
import { glueLine } from '../views/glue-line.js';
import { holeList } from './hole-making-intent.js';
import {
  enumerationSpan,
  integerSpan,
  lengthSpan,
  nameSpan,
  numberSpan,
  optionSpan,
  spans,
  spansIn,
  stringSpan,
} from './span-types.js';

function method<F>(name: string, fields: F): Field<ValueOf<typeof base & F>, false> {
  const codec: ElementCodec<ValueOf<typeof base & F>> = elementCodec<typeof base & F>(name, {
    ...base,
    ...fields,
  });
  return child(codec);
}

/** What is done to the spine of a book block before it is glued. */
const spineWork = spans(
  optionSpan,
  'SpineBrushing',
  'SpineFiberRoughing',
  'SpineLevelling',
  'SpineMilling',
  'SpineNotching',
  'SpineSanding',
  'SpineShredding',
);
const holes = { ...spans(enumerationSpan, 'HoleType'), holeList };
const stitches = { ...spans(enumerationSpan, 'StapleShape'), ...spans(integerSpan, 'StitchNumber') };

/** The ways to bind that the standard knows, with what may be asked of each. */
export const bindingMethods = {
  adhesiveBinding: method('AdhesiveBinding', {
    ...spans(enumerationSpan, 'Scoring', 'SpineGlue'),
    ...spans(optionSpan, 'TapeBinding'),
  }),
  adhesiveNote: method('AdhesiveNote', { glueLine: child(glueLine) }),
  bookCase: method('BookCase', {
    ...spans(optionSpan, 'HeadBands'),
    ...spans(enumerationSpan, 'Shape'),
    ...spans(numberSpan, 'Thickness'),
  }),
  channelBinding: method('ChannelBinding', {
    ...spans(stringSpan, 'ChannelBrand'),
    ...spans(optionSpan, 'Cover'),
    ...spans(numberSpan, 'Thickness'),
  }),
  coilBinding: method('CoilBinding', {
    ...spans(stringSpan, 'CoilBrand'),
    ...spans(enumerationSpan, 'CoilMaterial'),
    ...holes,
  }),
  edgeGluing: method('EdgeGluing', spans(enumerationSpan, 'EdgeGlue')),
  hardCoverBinding: method('HardCoverBinding', {
    ...spineWork,
    ...spans(optionSpan, 'BlockThreadSewing', 'EndSheets', 'HeadBands', 'JapanBind'),
    ...spans(enumerationSpan, 'HeadBandColor', 'Jacket', 'SpineGlue', 'StripMaterial', 'TightBacking'),
    ...spans(nameSpan, 'CoverStyle'),
    ...spans(stringSpan, 'HeadBandColorDetails'),
    ...spans(numberSpan, 'Thickness'),
    ...spansIn('Mm', lengthSpan, 'JacketFoldingWidth'),
  }),
  plasticCombBinding: method('PlasticCombBinding', {
    ...spans(stringSpan, 'CombBrand'),
    ...spans(nameSpan, 'PlasticCombType'),
    ...holes,
  }),
  ringBinding: method('RingBinding', {
    ...spans(stringSpan, 'BinderBrand'),
    ...spans(nameSpan, 'BinderMaterial', 'RingShape', 'RingSystem', 'ViewBinder'),
    ...spans(enumerationSpan, 'HoleType'),
    ...spans(optionSpan, 'RingMechanic', 'RivetsExposed'),
    ...spansIn('Mm', lengthSpan, 'RingDiameter'),
  }),
  saddleStitching: method('SaddleStitching', stitches),
  sideSewing: method('SideSewing', {}),
  sideStitching: method('SideStitching', stitches),
  softCoverBinding: method('SoftCoverBinding', {
    ...spineWork,
    ...spans(optionSpan, 'BlockThreadSewing', 'EndSheets'),
    ...spans(enumerationSpan, 'GlueProcedure', 'Scoring', 'SpineGlue'),
    ...spansIn('Mm', lengthSpan, 'FoldingWidth', 'FoldingWidthBack'),
  }),
  stripBinding: method('StripBinding', holes),
  tabs: method('Tabs', {
    tabBanks: optional('TabBanks', integerOrInfinity),
    tabCount: optional('TabCount', integerOrInfinity),
    tabsPerBank: optional('TabsPerBank', integerOrInfinity),
    ...spans(stringSpan, 'TabBrand', 'TabMylarColorDetails'),
    ...spansIn('Mm', lengthSpan, 'TabExtensionDistance'),
    ...spans(optionSpan, 'TabExtensionMylar', 'TabBindMylar', 'TabBodyCopy'),
    ...spans(enumerationSpan, 'TabMylarColor'),
  }),
  tape: method('Tape', spans(enumerationSpan, 'TapeColor')),
  threadSealing: method('ThreadSealing', {}),
  threadSewing: method('ThreadSewing', spans(optionSpan, 'Sealing')),
  wireCombBinding: method('WireCombBinding', {
    ...spans(stringSpan, 'WireCombBrand'),
    ...spans(enumerationSpan, 'WireCombMaterial'),
    ...spans(nameSpan, 'WireCombShape'),
    ...holes,
  }),
};
