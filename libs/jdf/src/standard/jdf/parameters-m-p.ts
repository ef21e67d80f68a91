/** Facts of the open standard: parameter resources, M to P. Notation: ../notation.ts. */
export const parametersMToP = `
ManualLaborParams : Parameter
  NMTOKEN: LaborType!
MediaSource : Parameter{-1.0}
  double: LeadingEdge
  string: MediaLocation
  SheetLay: SheetLay
  boolean: ManualFeed=false
  > Media?& Component?&
NodeInfo : Parameter
  duration: CleanupDuration SetupDuration TotalDuration
  DueLevel: DueLevel
  dateTime: End FirstEnd FirstStart LastEnd LastStart Start
  XYPair: IPPVersion
  language: NaturalLang{1.6-}
  NodeStatus: NodeStatus{1.3-}
  string: NodeStatusDetails{1.3-} WorkStepID{1.4-}
  boolean: MergeTarget{-1.0}
  URL: Route TargetRoute
  Integer0To100: JobPriority=50
  > BusinessInfo*[root,inline]{-1.5} Employee?& GangSource*{1.6-}
    JMF*{-1.4} MISDetails?{1.2-} NotificationFilter*{-1.5}
    BusinessInfo*:NodeInfo/BusinessInfo.lr[part]{-1.5}
NodeInfo/BusinessInfo
NodeInfo/BusinessInfo.lr
NumberingParams : Parameter{-1.4}
  > NumberingParam*
NumberingParams/NumberingParam
  string: StartValue
  double: XPosition Orientation
  DoubleList: YPosition
  Integer: Step=1
OrderingParams : Parameter{-1.4}
  double: Amount!
  string: Unit!
  > Company?&{-1.0} Contact*&
PDFToPSConversionParams : Parameter
  boolean: IgnoreDeviceExtGState{-1.0} BinaryOK=true CenterCropBox=true GeneratePageStreams=false
    IgnoreAnnotForms=false IgnoreBG=true IgnoreColorSeps=false IgnoreDSC=true IgnoreExternStreamRef=false
    IgnoreHalftones=false IgnoreOverprint=true IgnorePageRotation=false IgnoreRawData=false
    IgnoreSeparableImagesOnly=false IgnoreShowPage=false IgnoreTransfers=true IgnoreTTFontsFirst=false
    IgnoreUCR=true SetPageSize=false SetupProcsets=true ShrinkToFit=false SuppressCenter=false
    SuppressRotate=false TTasT42=false UseFontAliasNames=false
  rectangle: BoundingBox
  IncludePerPage: IncludeBaseFonts=IncludeNever IncludeCIDFonts=IncludeOncePerDoc
    IncludeEmbeddedFonts=IncludeOncePerDoc IncludeOtherResources=IncludeOncePerDoc
    IncludeProcSets=IncludeOncePerDoc IncludeTrueTypeFonts=IncludeOncePerDoc
    IncludeType1Fonts=IncludeOncePerDoc IncludeType3Fonts==IncludeOncePerPage[root,inline]
    IncludeType3Fonts[part]
  OutputType: OutputType=PostScript
  Integer: PSLevel=2
  double: Scale=100
PDLCreationParams : Parameter{1.3-}
  string: MimeType!
  > FontParams?&[root]{1.6-} PDFToPSConversionParams?&
    PSToPDFConversionParams?&
PDLResourceAlias : Parameter
  string: SourceName ResourceType!
  > FileSpec?&
PSToPDFConversionParams : Parameter
  AutoRotatePages: AutoRotatePages
  boolean: CompressPages ASCII85EncodePages=false DetectBlend=true DoThumbnails=true Optimize=true
  RenderingIntent: DefaultRenderingIntent
  Integer: EndPage{-1.2} ImageMemory{-1.1} OverPrintMode StartPage{-1.2}
  XYPair: InitialPageSize InitialResolution
  double: PDFVersion
  Binding: Binding=Left
  > AdvancedParams? PDFXParams?{1.2-} ThinPDFParams?
PSToPDFConversionParams/AdvancedParams
  boolean: AllowPSXObjects=true AllowTransparency=false AutoPositionEPSInfo=true EmbedJobOptions=false
    EmitDSCWarnings=false LockDistillerParams=true ParseDSCComments=true ParseDSCCommentsForDocInfo=true
    PassThroughJPEGImages=false PreserveCopyPage=true PreserveEPSInfo=true PreserveHalftoneInfo=false
    PreserveOverprintSettings=true PreserveOPIComments=true UsePrologue=false
  TransferFunctionInfo: TransferFunctionInfo=Preserve
  UCRandBGInfo: UCRandBGInfo=Preserve
PSToPDFConversionParams/ThinPDFParams
  boolean: FilePerPage=false SidelineEPS=false{1.2-} SidelineFonts=false SidelineImages=false
PSToPDFConversionParams/PDFXParams
  NMTOKEN: PDFXCheck
  boolean: PDFX1aCheck=false PDFX3Check=false PDFXCompliantPDFOnly=false PDFXNoTrimBoxError=true
    PDFXSetBleedBoxToMediaBox=true
  rectangle: PDFXBleedBoxToTrimBoxOffset PDFXTrimBoxToMediaBoxOffset
  string: PDFXOutputCondition PDFXOutputIntentProfile
  URL: PDFXRegistryName
  PDFXTrapped: PDFXTrapped
PackingParams : Parameter{-1.0}
  Integer: BoxedQuantity CartonQuantity PalletQuantity WrappedQuantity
  shape: BoxShape CartonShape
  double: CartonMaxWeight CartonStrength PalletMaxHeight PalletMaxWeight
  XYPair: PalletSize
  PalletType: PalletType
  PalletWrapping: PalletWrapping=None
  NMTOKEN: WrappingMaterial=None
PageAssignParams : Parameter{1.4-}
PageList : Parameter{1.2-}
  string: AssemblyID{-1.2} PageLabelPrefix PageLabelSuffix
  NMTOKENS: AssemblyIDs{1.3-}
  boolean: HasBleeds IsBlank IsPrintable IsTrapped Template=false
  shortString: JobID
  rectangle: SourceBleedBox SourceClipBox SourceTrimBox
  > Assembly?&{1.3-} ColorPool?& ContentList?&{1.3-}
    ImageCompressionParams?& PageData* ScreeningParams?& SeparationSpec* ElementColorParams?&
PageList/PageData
  string: AssemblyID{-1.2} CatalogDetails{-1.6} PageLabel PageLabelPrefix PageLabelSuffix
  NMTOKENS: AssemblyIDs{1.3-}
  shortString: CatalogID{-1.6} JobID ProductID
  IntegerList: FoldOutPages
  boolean: HasBleeds IsBlank IsPrintable IsTrapped Template
  NMTOKEN: PageFormat{1.3-} PageStatus{1.3-}
  IntegerRangeList: PageIndex{1.4-}
  rectangle: SourceBleedBox SourceClipBox SourceTrimBox
  > ElementColorParams?& ImageCompressionParams?& OCGControl*{1.6-} PageElement*{1.3-} ScreeningParams?&
    SeparationSpec*
PageList/PageData/PageElement{1.3-}
  IDREFS: ContentDataRefs{1.4-}
  Integer: ContentListIndex{-1.3}
  IntegerRangeList: ElementPages
  NMTOKEN: ContentType
  rectangle: RelativeBox
  > PageElement*:PageList/PageData/PageElement
PalletizingParams : Parameter
  IntegerList: LayerAmount{1.4-}
  double: MaxHeight MaxWeight
  XYPair: Overhang{1.4-} OverhangOffset{1.4-}
  string: Pattern
  > Bundle*&{1.4-}
PerforatingParams : Parameter
  > Perforate*
Person : Parameter
  string: AdditionalNames FamilyName PhoneticLastName{1.5-} FirstName PhoneticFirstName{1.5-} JobTitle
    NamePrefix NameSuffix
  languages: Languages{1.4-}
  > Address?&{1.2-} ComChannel*&
PlasticCombBindingParams : Parameter
  string: Brand ColorDetails{1.4-}
  NamedColor: Color
  double: Diameter Thickness
  HoleType: Type{-1.1}
  > HoleMakingParams?&
PlateCopyParams : Parameter{-1.0}
  Integer: Cycle
  Diffusion: Diffusion
  double: Vacuum
PreflightAnalysis : Parameter{-1.1}
  > ColorsResultsPool?:PreflightCommonPool
    DocumentResultsPool?:PreflightCommonPool FontsResultsPool?:PreflightCommonPool
    FileTypeResultsPool?:PreflightCommonPool ImagesResultsPool?:PreflightCommonPool
    PagesResultsPool?:PreflightCommonPool
PreflightInventory : Parameter{-1.1}
  > ColorsResultsPool?:PreflightCommonPool
    DocumentResultsPool?:PreflightCommonPool FontsResultsPool?:PreflightCommonPool
    FileTypeResultsPool?:PreflightCommonPool ImagesResultsPool?:PreflightCommonPool
    PagesResultsPool?:PreflightCommonPool
PreflightParams : Parameter{1.2-}
  > ActionPool* FileSpec?&[root]{1.4-} TestPool?{1.3-}
PreflightParams/TestPool
  > Test*:Test
PreflightProfile : Parameter{-1.1}
  > ColorsConstraintsPool?:PreflightCommonConstraintPool
    DocumentConstraintsPool?:PreflightCommonConstraintPool
    FontsConstraintsPool?:PreflightCommonConstraintPool
    FileTypeConstraintsPool?:PreflightCommonConstraintPool
    ImagesConstraintsPool?:PreflightCommonConstraintPool PagesConstraintsPool?:PreflightCommonConstraintPool
PreflightReport : Parameter{1.2-}
  Integer: ErrorCount WarningCount
  ErrorState: ErrorState
  > FileSpec?&{1.4-} PreflightParams& PreflightReportRulePool?&
    RunList& PRItem*
PreflightReport/PRItem
  IDREF: ActionRef!
  Integer: Occurrences!
  IntegerRangeList: PageSet
  > PRError*:PreflightReport/PRError PRGroup*:PreflightReport/PRGroup
PreflightReport/PRError
  ErrorState: ErrorType!
  NMTOKEN: Value!
PreflightReport/PRGroup
  Integer: Occurrences!
  IntegerRangeList: PageSet
  > PRGroupOccurrence* PROccurrence*
PreflightReportRulePool : Parameter{1.2-}
  Integer: MaxOccurrences
  > PRRule*:PRRP/PRRule PRRuleAttr?:PRRP/PRRuleAttr
PreviewGenerationParams : Parameter
  Compensation1: Compensation
  PreviewType1: PreviewType{-1.0}
  XYPair: Resolution Size
  AspectRatio: AspectRatio=Ignore
  PreviewFileType: PreviewFileType=PNG{1.2-}
  PreviewType: PreviewUsage=Separation
  > ImageSetterParams?&
PrintCondition : Parameter{1.2-}
  TransferFunction: AimCurve
  double: Density
  string: Name!
  > ColorMeasurementConditions?& Device?& FileSpec*&
PrintRollingParams : Parameter{1.2-}
  Integer: Copies
  double: MaxDiameter
ProductionPath : Parameter{1.3-}
  string: ProductionPathID
  > FolderSuperstructureWebPath?:ProductionPath/ProductionSubPath
    PostPressComponentPath*:ProductionPath/ProductionSubPath
    PrintingUnitWebPath*:ProductionPath/ProductionSubPath
ProductionPath/ProductionSubPath
  string: ProductionPathID
ProofingParams : Parameter{-1.1}
  ColorType1: ColorType
  XYPair: Resolution
  boolean: DisplayTraps=false HalfTone=false ManualFeed=false
  string: ImageViewingStrategy=NoImages
  ProofRenderingIntent: ProofRenderingIntent=Perceptual
  ProofType: ProofType=None
  > FileSpec?& Media?&
`;
