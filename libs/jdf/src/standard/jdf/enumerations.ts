/** Facts of the open standard: the closed lists of values */
export const enumerations = `
AcknowledgeType : Received Applied Completed
Action : LongFoldLeftToRight LongFoldRightToLeft LongPreFoldLeftToRight LongPreFoldRightToLeft
    FrontFoldComplete FrontFoldDiagonal FrontFoldCompleteDiagonal BackFoldComplete BackFoldDiagonal
    BackFoldCompleteDiagonal ReverseFold Milling Rotate90 Rotate180 Rotate270
Activation : Inactive Informative Held Active TestRun TestRunAndGo
Activation1 : Held Active TestRun TestRunAndGo
AllowedRotate : None Grain MinorGrain CrossGrain
AlternateColorSpace : CalGray CalRGB CIEBasedA CIEBasedABC CIEBasedDEFG DeviceCMYK DeviceGray DeviceN
    DeviceRGB ICCBased Lab
Anchor : TopLeft TopCenter TopRight CenterLeft Center CenterRight BottomLeft BottomCenter BottomRight
AnchorType : Parent Sibling
ApprovalRole : Approvinator Group Informative Obligated
ApprovalState : Approved ApprovedWithComment Rejected
ArtificialTextEffect : Bold Italic Outline Shadow Underline
AspectRatio : Ignore CenterMax CenterMin Crop Expand
AuthenticationReason : InitiateConnection ClientCertificateExpired ServerCertificateExpired
    ClientHostnameMismatch ServerHostnameMismatch ClientCertificateRevoked ServerCertificateRevoked Other
AuthenticationType : AsClient AsServer
AutoRotatePages : None All PageByPage
Automation : Static Dynamic
Availability : Installed Module NotInstalled NotLicensed Disabled
BandOrdering : BandMajor ColorMajor
BaseOrdReset : PagePool PagePoolList
BearerBars : None TopBottom Box BoxHMarks
BinderySignatureType : Die Fold Grid
Binding : Left Right
BindingEdge : Left Right Top Bottom None
BindingOrder : Collecting Gathering List None
BlackGeneration : Identity Custom
BlockElementType : CutElement PunchElement
BlockType : CutBlock SaveBlock TempBlock MarkBlock
BottleAxis : SpineHead SpineFoot FaceHead FaceFoot
Bottling : All Last None
Box : ArtBox BleedBox CropBox MarginsBox MediaBox SlugBox TrimBox
BoxFoldingType : Type00 Type01 Type02 Type03 Type04 Type10 Type11 Type12 Type13 Type15 Type20
BoxType : Box Carton Envelope
BundleType : BoundSet Box Carton CollectedStack CompensatedStack Pallet Roll Sheet SheetStream Stack
    StrappedStack StrappedCompensatedStack WrappedBundle
ByteOrder : II MM
CannotEmbedFontPolicy : Warning Error OK
CenterAcross : None FeedDirection MediaWidth Both
CenterReference : TrailingEdge RegistrationMark
ChannelMode : FireAndForget Reliable
ChannelType : ComputerName Email Fax InstantMessaging JMF Mobile Phone PrivateDirectory WWW
CharacterProblem : Corrupted IncorrectEncoding Missing Others
Coatings : None Coated Glossy HighGloss InkJet Matte Polymer Silver Satin Semigloss
ColorTransform : YUV None Automatic
ColorType : DieLine Normal Opaque OpaqueIgnore Primer Transparent
ColorType1 : Monochrome BasicColor MatchedColor
CombinedMethod : Combined CombinedProcessGroup GrayBox ProcessGroup None
CommandResult : Rejected Removed New Merged Replaced
CommentAction : Add Concat Replace Remove
Compensation : Unknown None Film Plate Press
Compensation1 : None Film Plate Press
CompensationProcess : Printing Platemaking
ComponentGranularity : Page Document Set All BundleItem
ComponentOrientation : XY XZ YZ
ComponentType : Block Other Ribbon Sheet Web FinalProduct PartialProduct Proof
CompressionFilter : CCITTFaxEncode DCTEncode FlateEncode WaveletEncode JBIG2Encode
CompressionType : ASCII85 ASCIIHex CCITT JBIG2 JPEG JPEG2000 LZW None RunLength ZIP
Condition : PagePoolStart PagePoolListStart PagePoolListEnd PagePoolEnd
Consumption : Full Partial
Context : Resource Link JMF Element
ContextMDM : Set Document SubDoc0 SubDoc1 SubDoc2 SubDoc3 SubDoc4 SubDoc5 SubDoc6 SubDoc7 SubDoc8 SubDoc9
    PagePool Page Object
ContextQueriedResources : Job Global
CostType : Chargeable NonChargeable
CoverType : Front Back
CutMarkType : CrossCutMark TopVerticalCutMark BottomVerticalCutMark LeftHorizontalCutMark
    RightHorizontalCutMark LowerLeftCutMark UpperLeftCutMark LowerRightCutMark UpperRightCutMark
CutType : Cut Perforate
DBSchemaType : CommaDelimited SQL XML
DeadLine : InTime Warning Late
DefaultPriority : Application DefaultJDF
DefectType : FinishingDefect ImageDefect ImageFinishingDefect Other SheetDefect SubstrateDefect
DeliveryMode : FullSheet RemoveGripperMargin SeparateBlanks
DeliveryTransfer : BuyerToPrinterDeliver BuyerToPrinterPickup PrinterToBuyerDeliver PrinterToBuyerPickup
DensityStandard : ANSIA ANSIE ANSII ANSIT DIN16536 DIN16536NB
DescriptionType : FoldProc FoldCatalog
DeviceCondition : OK NeedsAttention Failure OffLine
DeviceDetails : None Brief Modules Details NamedFeature Capability Full
DeviceOperationMode : Productive NonProductive Maintenance
DeviceStatus : Unknown Idle Down Setup Running Cleanup Stopped
Diffusion : On Off
DigitalDeliveryDirection : Push Pull
DigitalPrintingCollate : None Sheet SheetAndSet SheetSetAndJob SystemSpecified
DigitalPrintingPageDelivery : FanFold SameOrderFaceUp SameOrderFaceDown ReverseOrderFaceUp
    ReverseOrderFaceDown SystemSpecified
DigitalPrintingPrintingQuality : High Normal Draft SystemSpecified
DigitalPrintingPrintingType : SheetFed WebFed ContinuousFed SystemSpecified
DigitalPrintingSheetLay : Left Right Center SystemSpecified
DisjointingOffsetDirection : Alternate Left None Right Straight SystemSpecified
Disposition : Unlink Delete Retain
DispositionAction : Delete Archive
Drying : UV Heatset IR On Off
DueLevel : Unknown Trivial Penalty JobCancelled
ElementType : Auxiliary Barcode Composed Document Graphic IdentificationField Image MultiDocument MultiSet
    Page Reservation Surface Text Tile Unknown
EmbossingDirection : Both Flat Raised Depressed
EmbossingEdgeShare : Beveled Rounded
EmbossingLevel : SingleLevel MultiLevel Sculpted
EmbossingType : BlindEmbossing Braille EmbossedFinish FoilEmbossing FoilStamping RegisteredEmbossing
Encoding : ASCII Barcode BarCode1D BarCode2D Braille RFID
Encoding1 : ASCII Binary
EndStatusOfNode : Aborted Completed FailedTestRun Ready Stopped
EndStatusOfQueue : Aborted Completed
ErrorDataType : Invalid Missing Unsupported
ErrorState : TestNotSupported TestWrongPDL
ExecutionPolicy : RootNode FirstFound AllFound
ExposedMediaColorType : Color GrayScale Monochrome
ExposedMediaProofQuality : None Halftone Contone Conceptual
ExposedMediaProofType : None Imposition Page
Face : Top Bottom Left Right Front Back
FeedSheetLay : Leading Trailing
FeederSynchronization : Alternate Backup Chain Primary
FillColorType : CMYGray CMYBlack Other PureBlack PureGray RegistrationBlack RegistrationGray RichBlack White
FinishingOrder : FoldGather FoldCollect Gather GatherFold
FirstSurface : Either Front Back
FitPolicyGutterPolicy : Distribute Fixed
FitPolicyRotatePolicy : NoRotate RotateOrthogonal RotateClockwise RotateCounterClockwise
FitPolicySizePolicy : ClipToMaxPage Abort FitToPage ReduceToFit Tile
FlushPolicy : Complete QueueEntry Intermediate
FolioCount : Booklet Flat
FontType : CIDFontType0 CIDFontType1 CIDFontType2 CIDFontType3 CIDFontType4 OpenType TrueType Type0 Type1
    Type1MultipleMaster Type2C Type3 PDFType3 Type42 Unknown Other
ForceGangPolicy : All Optimized
FountainSolution : On Off
From : Front Left
GangPolicy : Gang GangAndForce NoGang
GeneralIDDataType : string integer double NMTOKEN boolean dateTime duration NamedFeature
GlueType : ColdGlue Hotmelt PUR
GluingTechnique : SpineGluing SideGluingFront SideGluingBack
HoleReferenceEdge : Left Right Top Bottom Pattern
HoleShape : Eliptical Round Rectangular
HoleType : Explicit R2-generic S1-generic S-generic R2m-DIN R2m-ISO R2m-MIB R2i-US-a R2i-US-b R3-generic
    R3i-US R4-generic R4m-DIN-A4 R4m-DIN-A5 R4m-swedish R4i-US R5-generic R5i-US-a R5i-US-b R5i-US-c
    R6-generic R6m-4h2s R6m-DIN-A5 R7-generic R7i-US-a R7i-US-b R7i-US-c R11m-7h4s P16_9i-rect-0t
    P12m-rect-0t W2_1i-round-0t W2_1i-square-0t W3_1i-square-0t C9.5m-round-0t
HoleType1 : None S1-generic S-generic R2-generic R2m-DIN R2m-ISO R2m-MIB R2i-US-a R2i-US-b R3-generic R3i-US
    R4-generic R4m-DIN-A4 R4m-DIN-A5 R4m-swedish R4i-US R5-generic R5i-US-a R5i-US-b R5i-US-c R6-generic
    R6m-4h2s R6m-DIN-A5 R7-generic R7i-US-a R7i-US-b R7i-US-c R11m-7h4s P16_9i-rect-0t P12m-rect-0t
    W2_1i-round-0t W2_1i-square-0t W3_1i-square-0t C9.5m-round-0t Explicit
HorizontalFitPolicy : NoRepeat StretchToFit UndistortedScaleToFit RepeatToFill RepeatUnclipped
ICCOutputProfileUsage : PDLActual PDLReference IgnorePDL
ICCProfileUsage : UsePDL UseSupplied
IDPParamsJobSheetOccurrence : Always End OnError Slip Start Both None
IDPParamsJobSheetType : AccountingSheet ErrorSheet JobSheet SeparatorSheet
IDPParamsStitchingPosition : None TopLeft BottomLeft TopRight BottomRight LeftEdge TopEdge RightEdge
    BottomEdge DualLeftEdge DualTopEdge DualRightEdge DualBottomEdge
IDPParamsStitchingRefEdge : Bottom Top Left Right
IconType : Unknown Idle Down Setup Running Cleanup Stopped
Illumination : D50 D65 Unknown
ImagableSide : Front Back Both Neither
ImageDownsampleType : Average Bicubic Subsample
ImageFlipped : Horizontal Vertical None
ImageMaskType : NoMask BitmapMask ColorKeyMask
ImageReplacementStrategy : Omit Proxy Replace AttemptReplacement
ImageShiftPosition1 : Left Right Center Spine None
ImageShiftPosition2 : Bottom Top Center Spine None
ImageTrapPlacement : Center Choke Normal Spread
ImageType : All Color Grayscale Monochrome
IncludeInBundleItem : After Before None New
IncludePerPage : IncludeNever IncludeOncePerDoc IncludeOncePerPage
IncorrectComponentQuality : NotActive Check Waste StopNoWaste StopWaste
InkState : Dry Wet NA
InternalColorModel : Basic Enhanced Explicit
JDFJMFVersion : 1.0 1.1 1.2 1.3 1.4 1.5 1.6 1.7 1.8 1.9
JMFRole : Receiver Sender
JogSide : Left Right Top Bottom None
KnockoutSource : ClipPath SourceClipPath TrimClipPath TrimBox
LaminatingMethod : CompoundFoil DispersionGlue Fusing Unknown
ListPolicy : All Available
ListType : CompleteList CompleteOrderedList ContainedList List OrderedList OrderedRangeList Range RangeList
    SingleValue Span UniqueList UniqueRangeList UniqueOrderedList UniqueOrderedRangeList
Location : Front Back OverfoldLeft OverfoldRight Overfold FinishedPage
LogicalStackSequence : SheetIndex DescendingSheetIndex
LotControl : Controlled NotControlled
LotDetails : Brief Full Amount
MappingSelection : UsePDLValues UseLocalPrinterValues UseProcessColorValues
MarkActivationContext : CollectIndex DocIndex SetDocIndex SetIndex SheetIndex SubDocIndex0 SubDocIndex1
    SubDocIndex2 SubDocIndex3 SubDocIndex4 SubDocIndex5 SubDocIndex6 SubDocIndex7 SubDocIndex8 SubDocIndex9
MarkContext : BinderySignature Cell CellPair Sheet Tile
MarkJustification : Left Right Center
MarkOrientation : Vertical Horizontal
MarkPosition : Top Bottom Left Right
MarkSideName : Front Back TwoSidedBackToBack TwoSidedIndependent
MarkUsage : Color PaperPath Tile
Mask : None TrimBox BleedBox SourceTrimBox SourceBleedBox PDL DieCut DieBleed
Masking : None WhiteBox
Material : LaqueredSteel NylonCoatedSteel PVC TinnedSteel ZincsSteel
Material1 : AdhesiveTape Strap String
MeasurementFilter : None Pol UV
MeasurementUsage : Master Standard
MediaDirection : Any Both ShortEdge LongEdge SameDirection XDirection YDirection
MediaSide : Front Back Both
MediaSubstrateType : LWCPlus LWCStandard NewsPlus PS1 PS2 PS3 PS4 PS5 PS6 PS7 PS8 SCPlus SCStandard SNP
MediaType : Blanket CorrugatedBoard Disc EndBoard EmbossingFoil Film Foil GravureCylinder ImagingCylinder
    LaminatingFoil MountingTape Other Paper Plate Screen SelfAdhesive Sleeve ShrinkFoil Synthetic Textile
    Transparency Unknown Vinyl
MediaUnit : Continuous Roll Sheet
MessageFamily : Acknowledge Response Signal All
MetaDataMapDataType : string integer double NMTOKEN boolean dateTime duration PartIDKeys
Method : BlowIn BindIn
MirrorAround : None FeedDirection MediaWidth Both
MirrorMargins : Vertical Horizontal
Modification : Create Delete Modify
Mounting : Unfixed Fixed Wet Registered
NodePhaseTimeStatus : TestRunInProgress Setup InProgress Cleanup Spawned Suspended Stopped
NodeStatus : Waiting TestRunInProgress Ready FailedTestRun Setup InProgress Cleanup Spawned Suspended
    Stopped Completed Aborted Part Pool
NotificationClass : Event Information Warning Error Fatal
OCGDefault : Exclude FromPDF Include
Opacity : Opaque Translucent Transparent
Opening : Back Front None Sucker
Operation : Convert Tag Untag Retag ConvertIgnore
OrdReset : Continue PagePool PagePoolList
Order : Collecting Gathering None List
Order1 : Collecting Gathering
Orientation : Rotate0 Rotate90 Rotate180 Rotate270 Flip0 Flip90 Flip180 Flip270
Orientation1 : Up Down Left Right
OutputColorSpace : LAB RGB CMYK GrayScale
OutputType : PostScript EPS
OverwritePolicy : Overwrite RenameNew RenameOld NewVersion OperatorIntervention Abort
Ownership : Origin Destination
PDFXTrapped : Unknown True False
Packaging : MIME None
PageDelivery : SameOrderFaceUp SameOrderFaceDown ReverseOrderFaceUp ReverseOrderFaceDown SystemSpecified
PageOrder : Ascending Descending
PalletType : 2Way 4Way Euro
PalletWrapping : StretchWrap Banding None
PartUsage : Explicit Implicit Sparse
PartitionKeys : BinderySignatureName BinderySignaturePaginationIndex BlockName BundleItemIndex CellIndex
    Condition DeliveryUnit0 DeliveryUnit1 DeliveryUnit2 DeliveryUnit3 DeliveryUnit4 DeliveryUnit5
    DeliveryUnit6 DeliveryUnit7 DeliveryUnit8 DeliveryUnit9 DocCopies DocIndex DocRunIndex DocSheetIndex
    DocTags Edition EditionVersion FountainNumber ItemNames LayerIDs Location Metadata0 Metadata1 Metadata2
    Metadata3 Metadata4 Metadata5 Metadata6 Metadata7 Metadata8 Metadata9 Option PageNumber PageTags
    PlateLayout PartVersion PreflightRule ProductPart PreviewType RibbonName Run RunIndex RunPage RunTags
    RunSet SectionIndex Separation SetCopies SetDocIndex SetIndex SetRunIndex SetSheetIndex SetTags
    SheetIndex SheetName Side SignatureName StationName SubRun TileID WebName WebProduct WebSetup
PatchUsage : Color Image Technical Ignore
PlacedObjType : Content Mark
PlateTechnology : FlexoAnalogSolvent FlexoAnalogThermal FlexoDigitalSolvent FlexoDigitalThermal
    FlexoDirectEngraving InkJet Thermal UV Visible
PlateType : Exposed Dummy
PlateUsage : Original Reuse
Polarity : Positive Negative
PoolStatus : Waiting TestRunInProgress Ready FailedTestRun Setup InProgress Cleanup Spawned Stopped
    Completed Aborted
PortraitOrLandscape : Portrait Landscape
Position : Header Trailer Page Top Bottom Left Right Front Back Any
PositionPolicy : Exact Free
PositionX : Center Left None Right
PositionY : Bottom Center None Top
PreStackMethod : All First None
PreflightLevel : Basic Extended Premium
PreflightStatus : NotPerformed WithErrors WithWarnings WithoutErrors
PreflightStatus2 : Error Warning Ignore IgnoreValue
PresentationDirection : ToBottomToRight ToBottomToLeft ToTopToRight ToTopToLeft ToRightToBottom ToRightToTop
    ToLeftToBottom ToLeftToTop
PreviewFileType : PNG CIP3Multiple CIP3Single
PreviewType : Animation Identification Separation SeparatedThumbNail SeparationRaw ThumbNail Static3D
    Viewable
PreviewType1 : Separation Viewable
PreviewUsage : 3D Animation Separation SeparationRaw SeparatedThumbNail ThumbNail Viewable
PrintPass : OneShot MultiShot
PrintQuality : High Normal Draft
PrintingTechnology : Flexo Gravure Offset Screen
PrintingType : ContinuousFed SheetFed WebFed WebMultiple WebSingle
ProductionType : Collect NonCollect
ProgressionOrder : LRCP RLCP RPCL PCRL CPRL
ProofRenderingIntent : Saturation Perceptual RelativeColorimetric AbsoluteColorimetric
ProofType : None Page Imposition
Property : Annotation Box Class Colorant Document Fill Font Graphic Image Logical Page PageBox PDLObject
    Reference Shading Stroke Text Vector
Purpose : Verification Separation Label
QueueEntryDetails : None Brief JobPhase JDF
QueueEntryStatus : Running Waiting Held Removed Suspended PendingReturn Completed Aborted
QueueStatus : Blocked Closed Full Running Waiting Held
Reason : OperatorInput PlanChange ProcessResult
ReferenceEdge : Top Left Right Bottom
RenderingIntent : Default Perceptual Saturation RelativeColorimetric AbsoluteColorimetric
RenderingIntent1 : ColorSpaceDependent Perceptual Saturation RelativeColorimetric AbsoluteColorimetric
RepeatPolicy : Complete CompleteOnly Fast
Resend : Required Prohibited
ResolutionReductionStrategy : Downsample Subsample Bicubic
ResourceClass : Consumable Handling Implementation Intent Parameter PlaceHolder Quantity
ResourceDetails : Brief Full
ResourceInfoLevel : Empty Low OK High Full
ResourceStatus : Incomplete Rejected Unavailable InUse Draft Complete Available
Restrictions : None WithinImposedSheetSet WithinLogicalStack
RetryPolicy : DiscardAtNextSignal RetryForever
RingSystem : 2HoleEuro 3HoleUS 4HoleEuro
Rotate : Rotate0 Rotate90 Rotate180 Rotate270
RotatePolicy : NoRotate RotateOrthogonal RotateClockwise RotateCounterClockwise
SampleBacking : Black White NA
Scope : Lifetime PowerOn Job
ScreeningType : AM FM Adaptive ErrorDiffusion HybridAM-FM HybridAMline-dot
Segmentation : SingleStrip Stripped Tiled
SetSplitBy : Page Document RunList
SettingsPolicy : BestEffort MustHonor OperatorIntervention
Severity : Error Warning Information
SewingPattern : Normal Staggered CombinedStaggered
SewingPattern1 : Normal Staggered CombinedStaggered Side
ShadingType : Smooth Vector
ShapeType : Rectangular Round Path RoundedRectangle
SheetCondition : Begin End BeginSet EndSet PagePoolBegin PagePoolEnd PagePoolListBegin PagePoolListEnd
    LogicalStackBegin LogicalStackEnd LogicalStackSetBegin LogicalStackSetEnd ImposedSheetSetBegin
    ImposedSheetSetEnd
SheetLay : Left Right Center
SheetLay1 : Left Right
SheetSides : Front Back FrontBack BackFront
SheetType : AccountingSheet ErrorSheet FillSheet InsertSheet JobSheet SeparatorSheet
SheetUsage : FillForceBack FillForceFront FillSheet FillSignature FillSurface Header Interleaved
    InterleavedBefore OnError Slip SlipCopy Trailer
ShrinkingMethod : ShrinkCool ShrinkHot
ShutDownType : StandBy Full
Side : Front Back
Side1 : Left Right Top Bottom
Side2 : FromInside FromOutside
Sides : OneSided OneSidedBack TwoSidedHeadToHead TwoSidedHeadToFoot Unprinted
Sides2 : OneSidedBackFlipX OneSidedBackFlipY OneSidedFront TwoSidedFlipX TwoSidedFlipY
Sides4 : OneSided TwoSidedLongEdge TwoSidedShortEdge
SidesDPParams : OneSidedBack OneSidedBackFlipX OneSidedBackFlipY OneSidedFront TwoSided TwoSidedFlipX
    TwoSidedFlipY
SizeIntentType : Folded Flat
SourceCSs : CalGray CalRGB Calibrated CIEBased CMYK DeviceN DevIndep RGB Gray ICCBased ICCCMYK ICCGray
    ICCLAB ICCRGB Lab Separation YUV All
SourceObject : All ImagePhotographic ImageScreenShot LineArt SmoothShades Text
SpanDataType : DurationSpan EnumerationSpan IntegerSpan NameSpan NumberSpan OptionSpan ShapeSpan StringSpan
    TimeSpan XYPairSpan
SpawnStatus : NotSpawned SpawnedRO SpawnedRW
SpotType : Emulated Spot
SpreadType : SinglePage Spread
StapleShape : Crown Overlap Butted ClinchOut Eyelet
StatusQuDeviceDetails : None Brief Modules Details Capability Full
StatusQuJobDetails : None MIS Brief Full
StitchOrigin : TrimBoxCenter TrimBoxJogSide UntrimmedJogSide
StitchType : Saddle Side Corner
StrappingType : Single Double Cross DoubleCross
StripMaterial : Calico Cardboard CrepePaper Gauze Paper PaperlinedMules Tape
SubmitPolicy : Standard Late Force
TabEdge : Left Rigth Top Bottom
TemplateType : Normal ConditionalSheets
ThreadMaterial : Cotton Nylon Polyester
TightBacking : Flat Round FlatBacked RoundBacked
TightBackingStitchingParams : Flat Pressure
To : Up Down
TransferFunctionInfo : Preserve Remove Apply
TransferFunctionSource : Document Device Custom
TransformationContext : StackItem Component CollateItem
TrapEndStyle : Miter Overlap
TrapJoinStyle : Bevel Miter Round
TrimmingType : Detailed SystemSpecified
TypeOrder : Fixed Unordered Unrestricted
UCRandBGInfo : Preserve Remove
URLType : JDFError JDFInput JDFOutput JMF SecureJMF
UpdateGranularity : All ChangesOnly
UpdateMethod : Complete Incremental Remove
Usage : Input Output
UserDisplay : Display Hide Dependant
ValueUsage : Allowed Device Present Job Estimate
VarnishArea : Full Spot
VarnishMethod : Blanket Plate Independent
VerticalFitPolicy : NoRepeat StretchToFit UndistortedScaleToFit RepeatToFill RepeatUnclipped
WhiteBase : Absolute Paper Substrate
WireCombMaterial : LaqueredSteel TinnedSteel ZincsSteel
WireCombShape : Single Twin
WorkStyle : Simplex Perfecting WorkAndBack WorkAndTurn WorkAndTumble WorkAndTwist
WorkType : Original Alteration Rework
WorkingDirection : Top Bottom
WrappingKind : Band LooseWrap ShrinkWrap
XYRelation : gt ge eq le lt ne
myParameter : Parameter
`;
