import { attributeOf, type XmlElement } from '../xml/index.js';
import { type Row, renamed, row } from './row.js';

/**
 * Elements that differ between the generations. Source: the differences of the two official schema sets (JDF 1.9, XJDF
 * 2.3); which value stands for which is our reading where the schemas only show that a name is gone.
 */

const COATINGS = [
  ['Glossy', 'Gloss'],
  ['HighGloss', 'Gloss', '~'],
  ['Semigloss', 'Satin', '~'],
] as const;
const POLARITY = [
  ['true', 'Positive'],
  ['false', 'Negative'],
] as const;

/** Sheets, plates and films are referred to by what they are. */
function mediaReference(_child: XmlElement, target: XmlElement): string | undefined {
  if (target.local !== 'Media') return undefined;
  const type = attributeOf(target, 'MediaType');
  if (type === 'Plate') return 'PlateRef';
  return type === 'Film' ? 'FilmRef' : 'PaperRef';
}

const looseBinding = (jdf: string, type: string): Row =>
  row(jdf, 'LooseBindingParams', { fill: { BindingType: type } });

const resources: readonly Row[] = [
  row('Layout', 'Layout', { refs: mediaReference }),
  row('StrippingParams', 'Layout', { refs: mediaReference }),
  row('Color', 'Color', { attributes: [renamed('MediaType', '')], fillOlder: { Name: 'Unknown' } }),
  looseBinding('CoilBindingParams', 'CoilBinding'),
  looseBinding('PlasticCombBindingParams', 'CombBinding'),
  looseBinding('WireCombBindingParams', 'CombBinding'),
  looseBinding('RingBindingParams', 'RingBinding'),
  looseBinding('ChannelBindingParams', 'ChannelBinding'),
  looseBinding('StripBindingParams', 'StripBinding'),
  row('DeliveryIntent', 'DeliveryParams'),
  row('Drop', 'DeliveryParams'),
  row('DropIntent', 'DeliveryParams'),
  row('Media', 'Media', {
    attributes: [
      renamed('FrontCoatings', 'Coating', COATINGS),
      renamed('BackCoatings', 'BackCoating', COATINGS),
      renamed('FrontCoatingDetail', 'CoatingDetail'),
      renamed('FrontGlossValue', 'GlossValue'),
      renamed('MediaType', 'MediaType', [
        ['Unknown', 'Other', '~'],
        ['EndBoard', 'Other', '~'],
      ]),
    ],
    fill: { MediaType: 'Other' },
  }),
  row('ExposedMedia', 'ExposedMedia', { attributes: [renamed('Polarity', 'Polarity', POLARITY)] }),
  row('ImageSetterParams', 'ImageSetterParams', {
    attributes: [renamed('Polarity', 'Polarity', POLARITY)],
  }),
  row('InterpretingParams', 'InterpretingParams', {
    attributes: [renamed('Polarity', 'Polarity', POLARITY)],
    refs: mediaReference,
  }),
  row('RasterReadingParams', 'RasterReadingParams', {
    attributes: [renamed('Polarity', 'Polarity', POLARITY)],
    refs: mediaReference,
  }),
  row('LayoutElement', 'RunList'),
  row('RunList'),
  row('FileSpec', 'FileSpec'),
  row('MiscConsumable', 'MiscConsumable', {
    attributes: [renamed('ConsumableType', 'Type')],
    fill: { Type: 'Other' },
  }),
  row('Device', 'Device', {
    attributes: [renamed('JMFURL', 'XJMFURL')],
    fill: { DeviceID: 'Unknown' },
  }),
  row('NodeInfo', 'NodeInfo', {
    attributes: [
      renamed('NodeStatus', 'Status', [
        ['Ready', 'Waiting', '~'],
        ['TestRunInProgress', 'Waiting', '~'],
        ['FailedTestRun', 'Waiting', '~'],
        ['Spawned', 'InProgress', '~'],
      ]),
      renamed('NodeStatusDetails', 'StatusDetails'),
    ],
  }),
  row('BinderySignature', 'BinderySignature', { fill: { BinderySignatureType: 'Fold' } }),
  row('Assembly', 'Assembly', {
    attributes: [renamed('AssemblyIDs', 'BinderySignatureIDs'), renamed('AssemblyID', 'BinderySignatureIDs')],
    fill: { Order: 'Gathering' },
  }),
  row('AssemblySection', 'AssemblySection', {
    attributes: [renamed('AssemblyIDs', 'BinderySignatureID'), renamed('AssemblyID', 'BinderySignatureID')],
  }),
  row('CutBlock', 'CutBlock', {
    attributes: [renamed('AssemblyIDs', 'BinderySignatureIDs')],
    fillOlder: { BlockType: 'CutBlock' },
  }),
  row('Component', 'Component', { fillOlder: { ComponentType: 'Sheet' } }),
  row('ColorSpaceConversionOp', 'ColorSpaceConversionOp', { fillOlder: { SourceCS: 'All' } }),
  row('Preview', 'Preview'),
  row('DeliveryParams', 'DeliveryParams'),
  row('BoxPackingParams', 'BoxPackingParams', { fill: { BoxType: 'Box' } }),
  row('WrappingParams', 'WrappingParams', { fill: { WrappingKind: 'LooseWrap' } }),
  row('UsageCounter', 'UsageCounter', {
    fill: { Scope: 'Job' },
    attributes: [renamed('Scope', 'Scope', [['LifeTime', 'Lifetime']])],
  }),
  row('ManualLaborParams', 'ManualLaborParams', { fill: { LaborType: 'Other' } }),
  row('InsertingParams', 'InsertingParams', { fill: { InsertLocation: 'Front' } }),
  row('PrintCondition', 'PrintCondition'),
  row('Shape', 'Shape', { fill: { ShapeType: 'Path' } }),
  row('Bundle', 'Bundle'),
  row('BundleItem', 'BundleItem', { fill: { Amount: '1' } }),
  row('RefAnchor', 'RefAnchor', { fill: { AnchorType: 'Parent' } }),
  row('Certification', 'Certification'),
  row('RegisterMark', 'RegisterMark'),
];

const DEVICE_STATUS = [
  ['Running', 'Production'],
  ['Down', 'Offline'],
  ['Unknown', 'Offline', '~'],
] as const;
const PHASE_STATUS = [
  ['TestRunInProgress', 'Setup', '~'],
  ['Ready', 'Waiting', '~'],
  ['FailedTestRun', 'Waiting', '~'],
  ['Spawned', 'Suspended', '~'],
] as const;

const messages: readonly Row[] = [
  row('DeviceInfo', 'DeviceInfo', {
    attributes: [
      renamed('DeviceStatus', 'Status', DEVICE_STATUS),
      renamed('DeviceCondition', 'DeviceCondition', [['OffLine', 'Offline']]),
    ],
    fillOlder: { DeviceStatus: 'Unknown' },
  }),
  row('ModuleStatus', 'ModuleInfo', {
    attributes: [renamed('DeviceStatus', 'ModuleStatus', DEVICE_STATUS)],
    fill: { ModuleID: 'Unknown' },
    fillOlder: { DeviceStatus: 'Unknown' },
  }),
  row('JobPhase', 'JobPhase', {
    attributes: [renamed('Status', 'Status', PHASE_STATUS)],
    fill: { JobID: 'Unknown' },
  }),
  row('ResourceQuParams', 'ResourceQuParams', {
    attributes: [renamed('ProductID', 'ExternalID')],
    fill: { Scope: 'Present' },
  }),
  row('ResourceCmdParams', 'ResourceCmdParams', { fill: { UpdateMethod: 'Complete' } }),
  row('PipeParams', 'PipeParams', { fill: { JobID: 'Unknown' } }),
  row('ResubmissionParams', 'ResubmissionParams', { fill: { UpdateMethod: 'Complete' } }),
  row('SubscriptionInfo', 'SubscriptionInfo', { attributes: [renamed('SenderID', 'DeviceID')] }),
];

const intents: readonly Row[] = [
  row('MediaIntent', 'MediaIntent', {
    attributes: [
      renamed('FrontCoatings', 'Coating', COATINGS),
      renamed('BackCoatings', 'BackCoating', COATINGS),
      renamed('StockBrand', 'Brand'),
      renamed('MediaType', 'MediaType', [['Unknown', 'Other', '~']]),
    ],
    fill: { MediaType: 'Paper' },
  }),
  row('FoldingIntent', 'FoldingIntent', { attributes: [renamed('FoldingCatalog', 'FoldCatalog')] }),
  row('BindingIntent', 'BindingIntent', {
    attributes: [
      renamed('BindingType', 'BindingType', [
        ['Adhesive', 'SoftCover', '~'],
        ['PlasticComb', 'CombBinding'],
        ['Ring', 'RingBinding'],
        ['Sewn', 'SoftCover', '~'],
        ['SideSewn', 'SideStitch', '~'],
        ['StripBind', 'StripBinding'],
        ['ThreadSealing', 'SoftCover', '~'],
      ]),
      renamed('BindingOrder', 'BindingOrder', [['List', 'None', '~']]),
    ],
    fill: { BindingType: 'None' },
  }),
  row('LaminatingIntent', 'LaminatingIntent', { fill: { Surface: 'Front' } }),
];

const common: readonly Row[] = [
  row('Part', 'Part', { attributes: [renamed('BinderySignatureName', 'BinderySignatureID')] }),
  row('Comment', 'Comment', { attributes: [renamed('Name', 'Type')] }),
  row('PhaseTime', 'JobPhase', {
    attributes: [
      renamed('Status', 'Status', [
        ['TestRunInProgress', 'Setup', '~'],
        ['Spawned', 'Suspended', '~'],
      ]),
    ],
  }),
  row('ProcessRun', 'ProcessRun', {
    attributes: [
      renamed('EndStatus', 'EndStatus', [
        ['FailedTestRun', 'Aborted', '~'],
        ['Ready', 'Completed', '~'],
        ['Stopped', 'Aborted', '~'],
      ]),
    ],
  }),
];

export const rows: readonly Row[] = [...resources, ...messages, ...intents, ...common];

const byOlder = new Map(rows.map((one) => [one.jdf, one]));
const byNewer = new Map<string, Row>();
for (const one of rows) if (!byNewer.has(one.xjdf) || one.jdf === one.xjdf) byNewer.set(one.xjdf, one);

/** The row of an element of the older generation; undefined where it goes by the facts alone. */
export function rowOfOlder(local: string): Row | undefined {
  return byOlder.get(local);
}

/** The row of an element of the newer generation, that of the same name first. */
export function rowOfNewer(local: string): Row | undefined {
  return byNewer.get(local);
}
