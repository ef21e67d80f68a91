/** Facts of the open standard: parameter resources, Q to R. Notation: ../notation.ts. */
export const parametersQToR = `
QualityControlParams : Parameter{1.2-}
  rectangle: Box{1.7-}
  Face: Position{1.7-}
  Integer: SampleInterval Severity{1.7-}
  NMTOKEN: SourceDeviceID{1.7-}
  duration: TimeInterval
  > BindingQualityParams? ColorMeasurement*{1.7-}
    FileSpec(0-2)&{1.6-} RegistrationQuality?
QualityControlParams/BindingQualityParams
  double: FlexValue PullOutValue
QualityControlResult : Parameter{1.2-} no-resource-generic
  rectangle: Box{1.7-}
  dateTime: End{1.6-} Start{1.6-}
  Integer: Failed Measurements{1.7-} Passed Severity{1.7-}
  MeasurementUsage[]: MeasurementUsage
  Face: Position{1.7-}
  IntegerRange: Sample{1.7-}
  NMTOKEN: SourceDeviceID{1.7-}
  > BindingQualityParams?:QualityControlParams/BindingQualityParams FileSpec?& Inspection?{1.7-}
    QualityMeasurement* RegistrationQuality?{1.7-}
QualityControlResult/BindingQualityMeasurement
  double: FlexValue PullOutValue
QualityControlResult/Inspection
  > Defect*:QualityControlResult/Defect FileSpec*
QualityControlResult/Defect
  rectangle: Box
  NMTOKEN: DefectReason DefectTypeDetails
  DefectType: DefectType
  Face: Face
  Integer: Severity
  double: Size
  > FileSpec*
QualityControlResult/QualityMeasurement
  dateTime: End Start
  Integer: Failed Passed
  NMTOKEN: Condition
  > BindingQualityMeasurement*:QualityControlResult/BindingQualityMeasurement
RasterReadingParams : Parameter{1.3-} no-parts-in-part
  XYPair: Poster{-1.4} PosterOverlap{-1.4} Scaling ScalingOrigin
  boolean: Center=false
  MirrorAround: MirrorAround=None
  Polarity: Polarity=Positive
  > FitPolicy? Media*&
RegisterMark : Parameter
  NMTOKENS: MarkType
  MarkUsage: MarkUsage
  double: Rotation
  XYPair: Center!
  > SeparationSpec*
RenderingParams : Parameter
  Integer: BandHeight BandWidth ColorantDepth
  BandOrdering: BandOrdering
  boolean: Interleaved
  string: MimeType{1.5-}
  > AutomatedOverPrintParams? ObjectResolution* Media?&{-1.1}
    TIFFFormatParams?{1.5-}
RenderingParams/TIFFFormatParams
  ByteOrder: ByteOrder
  Integer: Interleaving=1 RowsPerStrip SeparationNameTag=270
  boolean: WhiteIsZero=true
  Segmentation: Segmentation
  XYPair: TileSize
  > TIFFtag* TIFFEmbeddedFile*
RenderingParams/TIFFFormatParams/TIFFtag
  Integer: TagNumber! TagType!
  IntegerList: IntegerValue
  DoubleList: NumberValue
  string: StringValue
  hexBinary: BinaryValue
RenderingParams/TIFFFormatParams/TIFFEmbeddedFile
  Integer: TagNumber! TagType!
  > FileSpec*&
ResourceDefinitionParams : Parameter
  NMTOKEN: DefaultID{-1.0}
  URL: DefaultJDF
  DefaultPriority: DefaultPriority=DefaultJDF
  > ResourceParam*
ResourceDefinitionParams/ResourceParam
  NMTOKEN: DefaultID
  URL: DefaultJDF
  DefaultPriority: DefaultPriority
RingBindingParams : Parameter
  NamedColor: BinderColor SpineColor
  string: BinderColorDetails{1.4-} BinderName SpineColorDetails{1.4-}
  NMTOKEN: BinderMaterial RingShape ViewBinder
  double: RingDiameter SpineWidth
  boolean: RingMechanic RivetsExposed
  RingSystem: RingSystem{-1.0}
  > HoleMakingParams?&{1.2-}
RunList : Parameter
  Automation: Automation{1.5-}
  ComponentGranularity: ComponentGranularity{1.2-1.3}
  URL: Directory
  NameRangeList: DocNames PageNames SetNames
  IntegerRangeList: Docs PageListIndex{1.2-} Pages Sets
  IntegerList: DocPages{1.7-}
  boolean: EndOfBundleItem{1.2-} EndOfDocument EndOfSet Sorted IsPage=true
  Integer: FinishedPages{1.6-} FirstPage LogicalPage NDoc{-1.1} NPage NSet{-1.1} SkipPage DocCopies=1
    PageCopies=1 SetCopies=1
  PartitionKeys: IgnoreContext{1.4-}
  NMTOKEN: RunTag
  SheetSides: SheetSides{1.4-}
  > ByteMap?& DynamicInput*{-1.3} MetadataMap*[root]{1.4-}
    InsertSheet*& LayoutElement?& InterpretedPDLData?&{1.2-} Disposition? PageList?&
RunList/DynamicInput mixed
  string: Name
`;
