import { cmykColor, labColor, namedColor, srgbColor } from './colours.js';
import { listOf, matching, only } from './combine.js';
import { durationOrInfinity } from './durations.js';
import { matrix, matrixShift, rectangle, shape, transferFunction, xyPair } from './geometry.js';
import { boolean, integerOrInfinity, longInteger, number, percent, share, stepRepeat } from './numbers.js';
import { pdfPath } from './pdf-path.js';
import * as ranges from './ranges.js';
import { clockTime, date, dateTime, yearMonth } from './stated-time.js';
import * as texts from './texts.js';
import { url } from './uri.js';
import type { ValueType } from './value-type.js';

const partName = texts.nmtoken;
const partIndex = ranges.integerRangeList;
const partTags = ranges.nameRangeList;

/** Two capital letters (ISO 3166-1). */
export const countryCode = matching(/^[A-Z][A-Z]$/, 'two capital letters, such as DE');

const PRESENTATION =
  /^(FoldCatalog|[xX][yY][zZ]|[xX][zZ][yY]|[yY][xX][zZ]|[yY][zZ][xX]|[zZ][xX][yY]|[zZ][yY][xX])$/;

/**
 * Every attribute type of JDF and JMF that is no list of names, by the name that the standard's schema gives it; the last
 * ones have no name there and go by that of their attribute. A type reads what the schema allows, but for what
 * `stricterThanSchema` says. Source: the official JDF 1.9 schema (JDFTypes).
 */
export const dataTypes = {
  boolean,
  booleanList: listOf(boolean),
  eBooleanStateList_: listOf(boolean),
  ePresentValueList: listOf(boolean),
  double: number,
  DoubleList: listOf(number),
  DoubleRange: ranges.doubleRange,
  DoubleRangeList: ranges.doubleRangeList,
  Integer: integerOrInfinity,
  IntegerList: listOf(integerOrInfinity),
  IntegerRange: ranges.integerRange,
  IntegerRangeList: ranges.integerRangeList,
  Integer0To100: percent,
  LongInteger: longInteger,
  StepRepeat: stepRepeat,
  XYPair: xyPair,
  XYPairRange: ranges.xyPairRange,
  XYPairRangeList: ranges.xyPairRangeList,
  shape,
  ShapeRange: ranges.shapeRange,
  ShapeRangeList: ranges.shapeRangeList,
  rectangle,
  RectangleRange: ranges.rectangleRange,
  RectangleRangeList: ranges.rectangleRangeList,
  matrix,
  MatrixShift_: matrixShift,
  TransferFunction: transferFunction,
  PDFPath: pdfPath,
  ColorValue: share,
  ColorValueList: listOf(share),
  CMYKColor: cmykColor,
  LabColor: labColor,
  sRGBColor: srgbColor,
  NamedColor: namedColor,
  date,
  dateTime,
  DateTimeRange: ranges.dateTimeRange,
  DateTimeRangeList: ranges.dateTimeRangeList,
  duration: durationOrInfinity,
  DurationRange: ranges.durationRange,
  DurationRangeList: ranges.durationRangeList,
  gYearMonth: yearMonth,
  Time: clockTime,
  TimeRange: ranges.clockTimeRange,
  string: texts.string,
  shortString: texts.shortString,
  longString: texts.longString,
  Text: texts.longText,
  CommentString_: texts.text,
  _emptyString: only(texts.text, (value) => value === '', 'empty'),
  regExp: texts.regExp,
  XPath: texts.xPath,
  URL: url,
  URI: url,
  NMTOKEN: texts.nmtoken,
  name: texts.nmtoken,
  EnumerationBaseType: texts.nmtoken,
  eIntentPriority_: texts.nmtoken,
  _NMTOKENS: texts.upTo2048Tokens,
  NMTOKENS: texts.nmtokens,
  NameRange: ranges.nameRange,
  NameRangeList: ranges.nameRangeList,
  QName: texts.prefixedName,
  ID: texts.id,
  IDREF: texts.id,
  IDREFS: texts.ids,
  hexBinary: texts.hexBinary,
  hexBinaryList: texts.hexBinaries,
  language: texts.language,
  languages: texts.languages,
  LanguagesOrAll: texts.languagesOrAll,
  ePresentationDirection1_: matching(PRESENTATION, 'FoldCatalog, or the axes x, y and z in some order'),
  pBinderySignatureName: partName,
  pBinderySignaturePaginationIndex: partIndex,
  pBlockName: partName,
  pBundleItemIndex: partIndex,
  pCellIndex: partIndex,
  pCondition: partName,
  pDeliveryUnit: partName,
  pDocCopies: partIndex,
  pDocIndex: partIndex,
  pDocRunIndex: partIndex,
  pDocSheetIndex: partIndex,
  pDocTags: partTags,
  pFountainNumber: integerOrInfinity,
  pItemNames: texts.nmtokens,
  pLayerIDs: partIndex,
  pPageNumber: partIndex,
  pPageTags: partTags,
  pPlateLayout: partName,
  pRunIndex: partIndex,
  pRunPage: integerOrInfinity,
  pRunPageRange: partIndex,
  pRunTags: partTags,
  pSectionIndex: partIndex,
  pSeparation: texts.string,
  pSetDocIndex: partIndex,
  pSetIndex: partIndex,
  pSetRunIndex: partIndex,
  pSetSheetIndex: partIndex,
  pSetTags: partTags,
  pSheetIndex: partIndex,
  pSheetName: texts.string,
  pSignatureName: texts.string,
  pSortAmount: boolean,
  pSorting: partIndex,
  pStationName: texts.string,
  pSubRun: partName,
  pTileID: xyPair,
  CountryCode: countryCode,
  RelativeTravel: share,
} satisfies Record<string, ValueType<unknown>>;

/** Types whose values are names of a closed list, or several of them: the list, by its name in the schema. */
export const enumerationTypes: Readonly<Record<string, { readonly of: string; readonly many: boolean }>> = {
  pPreviewType: { of: 'ePreviewType_', many: false },
  pSide: { of: 'Side', many: false },
  ...Object.fromEntries(
    Object.entries({
      OrientationList: 'Orientation',
      JDFJMFVersions: 'JDFJMFVersion',
      eAcknowledgeTypeList_: 'eAcknowledgeType_',
      eMeasurementUsages_: 'eMeasurementUsage_',
      eChannelModeList_: 'eChannelMode_',
      eCombinedMethods_: 'eCombinedMethod_',
      eComponentTypeList_: 'eComponentType_',
      eCompressionTypes_: 'eCompressionType_',
      eHoleTypes_: 'eHoleType_',
      eHoleTypes1_: 'eHoleType1_',
      eIconTypes_: 'eIconType_',
      eNodeStatuses_: 'eNodeStatus_',
      eNotificationClasses_: 'eNotificationClass_',
      ePackagingList_: 'ePackaging_',
      ePartitionKeysList_: 'ePartitionKeys_',
      ePreviewUsageList_: 'ePreviewUsage_',
      ePropertyList_: 'eProperty_',
      eQueueEntryStatusList_: 'eQueueEntryStatus_',
      eResourceClasses_: 'eResourceClass_',
      eSourceCSsList_: 'eSourceCSs_',
      eSourceObjects_: 'eSourceObject_',
      eURLTypes_: 'eURLType_',
    }).map(([name, of]) => [name, { of, many: true }]),
  ),
};

const RANGE = 'A separator ~ stands between two values: low ~ high (standard, data types, ranges).';
const APART = 'Values of a list are separated by blanks: 3-5 is not 3 and -5 (standard, data types, lists).';
const PAIRS = 'A function is given by its points, so that its numbers come in pairs (standard, data types).';

const stricter = new Map<ValueType<unknown>, string>([
  [ranges.doubleRange, RANGE],
  [ranges.doubleRangeList, RANGE],
  [ranges.xyPairRange, RANGE],
  [ranges.xyPairRangeList, RANGE],
  [ranges.shapeRange, RANGE],
  [ranges.shapeRangeList, RANGE],
  [ranges.rectangleRange, RANGE],
  [ranges.rectangleRangeList, RANGE],
  [ranges.nameRange, RANGE],
  [ranges.nameRangeList, RANGE],
  [ranges.dateTimeRange, RANGE],
  [ranges.dateTimeRangeList, RANGE],
  [ranges.durationRange, RANGE],
  [ranges.durationRangeList, RANGE],
  [ranges.clockTimeRange, RANGE],
  [ranges.integerRangeList, APART],
  [transferFunction, PAIRS],
]);

/**
 * The types that do not read all that the schema allows, each with the clause: the schema describes ranges only as lists
 * of words, in which `~ ~ 1` would be one.
 */
export const stricterThanSchema: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(dataTypes).flatMap(([name, type]) => {
    const clause = stricter.get(type);
    return clause === undefined ? [] : [[name, clause]];
  }),
);
