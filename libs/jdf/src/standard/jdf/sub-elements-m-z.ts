/** Facts of the open standard: elements inside resources, M to Z. Notation: ../notation.ts. */
export const subElementsMToZ = `
MISDetails{1.2-}
  double: Complexity
  CostType: CostType
  DeviceOperationMode: DeviceOperationMode
  WorkType: WorkType
  string: WorkTypeDetails
MarkColor{1.5-}
  string: Name!
  double: Tint!
MediaLayers{1.3-}
  > GlueLine* Media*&
MetaDataMap/Expr mixed
  NMTOKEN: Name!
  XPath: Path
  string: Value
  > any:AbstractTerms
MetadataMap{1.4-}
  ContextMDM: Context=PagePool
  MetaDataMapDataType: DataType!
  NMTOKEN: Name!
  string: ValueFormat! ValueTemplate!
  > Expr*:MetaDataMap/Expr
NotificationFilter : QueryTypeObj
  shortString: DeviceID{-1.3} JobID{-1.4} JobPartID{-1.4} QueueEntryID{1.2-1.4}
  NMTOKENS: MilestoneTypes{1.4-} SignalTypes=Notification{1.2-} Types
  NotificationClass[]: Classes
  > Part*{1.2-1.4}
OCGControl{1.3-}
  boolean: IncludeOCG=true
  string: OCGName
  NMTOKEN: ProcStepsGroup{1.6-} ProcStepsType{1.6-}
ObjectResolution
  NMTOKEN: AntiAliasing
  NMTOKENS: ObjectTags
  XYPair: Resolution!
  SourceObject[]: SourceObjects
PRGroupOccurrence : PRGroupOccurrenceBase
  > StringListValue*:Preflight/StringListValue ArgumentValue*:Preflight/ArgumentValue
PRGroupOccurrenceBase no-generic
  Integer: PageNumber EncryptionLength EncryptionV FileSize NumberOfPages NumberOfColorsInLUT OverPrintMode
    BitsPerSample EstimatedJPEGQuality ImageRotation PixelHeight PixelWidth Count ReversePageNumber
    NumberOfPathPoints
  boolean: AnnotationPrintFlag InsideBox OutsideBox AliasSeparations AmbiguousSeparations
    DocumentIsGoodCompression EncryptedDocument Linearized PagesHaveSameOrientation SeparationFlag
    HasFillColor EmbeddingRestrictionFlag FontCorrupted FontEmbedded FontIsStandardLatin FontNotUsed
    FontSubset IsDoubleByteFont IsFontScreenOnly AlphaIsShape BelongsToAnnotation EmbeddedPS HasSoftMask
    HasColorLUT OverPrintFlag TransparencyFlag BlankPage PageHasOptionalContent PageHasUnknownObjects
    ExternalReferenceMissing HasExternalReference HasOPI OPIMissing HasStrokeColor StrokeOverprintFlag
    MissingPrinterFont MissingScreenFont
  NMTOKEN: AnnotationType ClassName CreationID EncryptionFilter EncryptionSubFilter ModificationID
    OutputIntentColorSpace=None PDFXVersion DocumentPDLType PSFontName BlendMode HalfTone RenderingIntent
    PDLObjectType OPIType
  NMTOKENS: TrapnetAnnotationPDFX DocumentCorruption EncryptionRestrictions AlternateImages OPIVersion
  rectangle: BoundingBox
  Box: DifferentBoxSize PageBoxType
  Property[]: PropertyList
  double: InkCoverage Flatness Smoothness CompressionRatio ImageScalingRatio ImageSkew PageScalingFactor
    StrokeThickness TextSize
  string: SeparationList Author Creator FileName Keywords OutputIntentStandard PDLVersion Producer Subject
    Title FillColorName FontCreator FontName FontVendor StrokeColorName
  SheetLay1: Binding
  dateTime: CreationDate CreationDateInDocument ModificationDate ModificationDateInDocument
  CompressionType[]: DocumentCompression CompressionTypes
  Encoding1: DocumentEncoding
  PDFXTrapped: TrappedKey
  FillColorType: FillColorType StrokeColorType
  FontType: FontType=Other
  AlternateColorSpace: AlternateColorSpace ColorSpace BlendColorSpace StrokeAlternateColorSpace
    StrokeColorSpace
  BlackGeneration: BlackGeneration TransferFunction UnderColorRemoval
  XYPair: HalfTonePhase EffectiveResolution OriginalResolution
  ImageFlipped: ImageFlipped
  ImageMaskType: ImageMaskType
  ShadingType: ShadingType StrokeShadingType
  CharacterProblem: CharacterProblem
  ArtificialTextEffect: UseArtificialTextEffect
  > SourceResource* QualityControlResult*&
PROccurrence : PRGroupOccurrenceBase
  Integer: Occurrences
  > PRGroup*:PreflightReport/PRGroup
PRRP/PRRule
  IDREFS: ActionRefs!
  > PRRuleAttr*:PRRP/PRRuleAttr
PRRP/PRRuleAttr
  NMTOKENS: GroupBy=Tested ReportAttr
  Integer: LogErrors MaxGroups MaxPerGroup
Perforate
  double: Depth{1.2-} TeethPerDimension
  XYPair: RelativeStartPosition{1.2-} RelativeWorkingPath{1.2-} StartPosition WorkingPath
  WorkingDirection: WorkingDirection
Preflight/ArgumentValue
  NMTOKEN: Name!
  > PreflightArgument*
Preflight/StringListValue
  NMTOKEN: Name!
  > Value*:StringEvaluation/Value
PreflightCommonConstraintPool
  > PreflightConstraint*
PreflightCommonPool
  > PreflightDetail* PreflightInstance*
PreflightConstraint
  boolean: AttemptFixupErrors=false AttemptFixupWarnings=false
  string: Constraint
  PreflightStatus2: Status
  > ConstraintValue*:PreflightValue
PreflightDetail
  IntegerRangeList: PageRefs
  string: Property
  PreflightStatus2: Status
  > Value*:PreflightValue
PreflightInstance
  string: Identifier
  IntegerRangeList: PageRefs
  > PreflightInstanceDetail*
PreflightInstanceDetail
  PreflightStatus2: Status
  string: Property
  > Value*:PreflightValue
PreflightValue
Preview : Resource.inline no-generic
  Compensation: Compensation
  matrix: CTM
  URL: Directory URL
  string: MimeTypeDetails Separation SheetName SignatureName PreviewFileType=PNG
  PreviewType: PreviewType PreviewUsage=Separation
  PartitionKeys[]: PartIDKeys PipePartIDKeys
  NMTOKEN: BinderySignatureName BlockName Condition DeliveryUnit0 DeliveryUnit1 DeliveryUnit2 DeliveryUnit3
    DeliveryUnit4 DeliveryUnit5 DeliveryUnit6 DeliveryUnit7 DeliveryUnit8 DeliveryUnit9 Edition
    EditionVersion Location Option PlateLayout PreflightRule RibbonName Run RunSet SubRun WebName WebProduct
    WebSetup
  IntegerRangeList: BinderySignaturePaginationIndex BundleItemIndex CellIndex DocIndex DocCopies DocRunIndex
    DocSheetIndex LayerIDs PageNumber RunIndex SectionIndex SetDocIndex SetRunIndex SetSheetIndex SetIndex
    SheetIndex
  Integer: FountainNumber RunPage
  NameRangeList: DocTags Metadata0 Metadata1 Metadata2 Metadata3 Metadata4 Metadata5 Metadata6 Metadata7
    Metadata8 Metadata9 PageTags RunTags SetTags
  NMTOKENS: ItemNames PartVersion
  Side: Side
  XYPair: TileID
  boolean: NoOp
  myParameter: Class
  PartUsage: PartUsage
  > Comment* GeneralID* Preview* SourceResource* QualityControlResult*&
RefAnchor
  Anchor: Anchor
  AnchorType: AnchorType
  IDREF: rRef
RegistrationQuality{1.7-}
  XYPair: Offset!
  NMTOKEN: Reference!
RuleLength
  Integer: DDESCutType!
  double: Length!
ScreenSelector
  double: Angle DotSize Frequency
  string: AngleMap ScreeningFamily Separation=All
  NMTOKENS: ObjectTags{1.4-}
  ScreeningType: ScreeningType
  DoubleRange: SourceFrequency
  SourceObject[]: SourceObjects
  NMTOKEN: SpotFunction
SeparationList
  > SeparationSpec*
SeparationSpec
  string: Name
ShapeDefProdParams/ObjectModel
  shape: Dimensions
  > FileSpec*&
ShapeDefProdParams/ShapeTemplate
  shape: InnerDimensions
  string: Name Standard
  > FileSpec*&
SourceResource : Resource.inline{1.3-}
  > any:ResourceRef
SurfaceMark
  Face: Surface!
  > ColorControlStrip*& CutMark*& RegisterMark*& ScavengerArea*&
TabDimensions{1.3-}
  TabEdge: TabEdge
  double: TabExtensionDistance TabOffset TabWidth
  Integer: TabsPerBank
  NMTOKEN: TabSetCollationOrder
`;
