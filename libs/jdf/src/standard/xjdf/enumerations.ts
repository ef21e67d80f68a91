/** Facts of the open standard, second generation: the closed lists of values */
export const enumerations = `
Action : BackFoldComplete BackFoldDiagonal BackFoldCompleteDiagonal FrontFoldComplete FrontFoldDiagonal
    FrontFoldCompleteDiagonal Glue LongFoldLeftToRight LongFoldRightToLeft LongPreFoldLeftToRight
    LongPreFoldRightToLeft Milling ReverseFold Rotate90 Rotate180 Rotate270
Activation : Informative Held Active PendingReturn Removed
AllowedRotate : None Grain MinorGrain CrossGrain
Anchor : BottomCenter BottomLeft BottomRight Center CenterLeft CenterRight TopCenter TopLeft TopRight
AnchorType : Parent Sibling
ApprovalRole : Approvinator Informative Obligated
ApprovalState : Approved ApprovedWithComment Rejected
AspectRatio : CenterMax CenterMin Crop Expand Ignore
AutoRotatePages : None All PageByPage
BandOrdering : BandMajor ColorMajor
BearerBars : None TopBottom Box BoxHMarks
BinderySignatureType : Fold Grid Die
Binding : Left Right
BindingOrder : None Collecting Gathering
BindingType : AdhesiveNote ChannelBinding CoilBinding CombBinding CornerStitch EdgeGluing HardCover
    LooseBinding None RingBinding SaddleStitch ScrewBinding SideStitch SoftCover StripBinding Tape WireComb
BindingType2 : ChannelBinding CoilBinding CombBinding RingBinding ScrewBinding StripBinding
Bottling : All Last None
BoxFoldingType : Type00 Type01 Type02 Type03 Type04 Type10 Type11 Type12 Type13 Type15 Type20
BoxType : Box Carton Envelope Tube
BundleType : BoundSet Box Carton CollectedStack CompensatedStack Pallet Product Roll Sheet Stack
    StrappedStack StrappedCompensatedStack WrappedBundle
ByteOrder : II MM
CenterReference : RegistrationMark TrailingEdge
Classes : Event Information Warning Error Fatal
Coating : Coated Gloss Matte None Satin
Collate : None Sheet
ColorTransform : None YUV Automatic
ColorType : Monochrome BasicColor MatchedColor
ColorType2 : DieLine Normal Opaque OpaqueIgnore Primer Transparent
CommandResult : Merged New Rejected Removed Replaced
Compensation : None Film Plate Press
CompensationProcess : Printing Platemaking
CostType : Chargeable NonChargeable
CutDepth : Full Partial
CutType : Cut Perforate
DataType : boolean dateTime duration float integer NamedFeature NMTOKEN string
DeadLine : InTime Late Warning
DefectType : FinishingDefect ImageDefect ImageFinishingDefect Other SheetDefect SubstrateDefect
DeliveryMode : FullSheet RemoveGripperMargin SeparateBlanks
DeviceCondition : OK NeedsAttention Failure Offline
DeviceDetails : Brief Modules Full
DeviceStatus : Cleanup Idle NonProductive Offline Production Setup Stopped
DieSide : Up Down
Direction : Alternate Left None Right
DispositionAction : Delete Archive
DueLevel : Trivial Penalty JobCancelled
Edge : Bottom Left Right Top
EdgeShape : Beveled Rounded
EmbossType : BlindEmbossing Braille EmbossedFinish FoilEmbossing FoilStamping
Encoding : ASCII Barcode Braille RFID
EndStatus : Aborted Completed
EnumAutomation : Dynamic Static
EnumChannelMode : FireAndForget Reliable
EnumDeviceAxis : None FeedDirection MediaWidth Both
EnumDrying : Heatset IR Off On UV
EnumEmbossDirection : Both Depressed Flat Raised
EnumFeedQuality : NotActive Check Waste StopNoWaste StopWaste
EnumFitPolicy : NoRepeat RepeatToFill RepeatUnclipped StretchToFit UndistortedScaleToFit
EnumGangPolicy : Gang GangAndForce NoGang
EnumGlue : ColdGlue Hotmelt PUR
EnumIncludeResources : IncludeNever IncludeOncePerDoc IncludeOncePerPage
EnumOpacity : Opaque Translucent Transparent
EnumPreflightAction : Abort Continue Repair
EnumTopBottom : Top Bottom
ExpansionPolicy : HorizontalOnly HorizontalVertical VerticalOnly VerticalHorizontal
Face : Back Bottom Front Left Right Top
FeedSheetLay : Leading Trailing
FeederSynchronization : Alternate Backup Chain Primary
FountainSolution : On Off
From : Front Left
GlueProcedure : Spine SideOnly SingleSide SideSpine
GlueType : ColdGlue Hotmelt Permanent PUR Removable
GluingTechnique : SpineGluing SideGluingFront SideGluingBack
GutterPolicy : Distribute Fixed
HorizontalGridDirection : LeftToRight RightToLeft
ICCProfileUsage : UsePDL UseSupplied
ISOPaperSubstrate : PS1 PS2 PS3 PS4 PS5 PS6 PS7 PS8 LWCPlus LWCStandard NewsPlus SCPlus SCStandard SNP
ImagableSide : Front Back Both Neither
ImageDownsampleType : Average Bicubic Subsample
ImageType : Color Grayscale Monochrome
IncludeType3Fonts : IncludeOncePerPage
InkState : Dry Wet
InsertLocation : Back FinishedPage Front Overfold
JDFVersions : 1.1 1.2 1.3 1.4 1.5 1.6 1.7 1.8 2.0 2.1 2.2 2.3
Jacket : None Loose Glue
KnockoutSource : ClipPath SourceClipPath TrimBox
LaminatingMethod : CompoundFoil DispersionGlue Fusing
Level : Empty Full High Low OK
LooseBindMaterial : Steel ColorCoatedSteel Plastic
MappingSelection : UsePDLValues UseLocalPrinterValues UseProcessColorValues
MarkType : CrossCutMark TopVerticalCutMark BottomVerticalCutMark LeftHorizontalCutMark
    RightHorizontalCutMark LowerLeftCutMark UpperLeftCutMark LowerRightCutMark UpperRightCutMark
MarkUsage : Color PaperPath Tile
Mask : BleedBox DieCut None PDL SourceBleedBox SourceTrimBox TrimBox
Masking : None WhiteBox
MeasurementFilter : None Pol UV
MeasurementUsage : Master Standard
MediaDirection : Any SameDirection XDirection YDirection
MediaSide : Front Back
MediaType : Blanket CorrugatedBoard Disc EmbossingFoil Film Foil GravureCylinder ImagingCylinder
    LaminatingFoil MountingTape Other Paper Plate Screen SelfAdhesive ShrinkFoil Sleeve Synthetic Textile
    Transparency Vinyl
MediaUnit : Continuous Roll Sheet
Method : BindIn BlowIn
ModuleType : PrintModule CoatingModule
NodeStatus : Aborted Cleanup Completed InProgress Setup Stopped Suspended Waiting
Opening : Back Front None Sucker
Operation : Close Pause Pull Push
Operation2 : Convert Tag Untag
Operation3 : Abort Complete Hold Move Remove Resume SetGang Suspend
OrdType : Content Insert Reservation
Order : Collecting Gathering None List
Orientation : Rotate0 Rotate90 Rotate180 Rotate270 Flip0 Flip90 Flip180 Flip270
Orientation2 : Down Left Right Up
OutputType : EPS PostScript
OverfoldSide : Back BackHalf Front FrontHalf
OverwritePolicy : Overwrite RenameNew RenameOld NewVersion OperatorIntervention Abort
Ownership : Destination Origin
PDFXTrapped : Unknown false true
Packaging : XML Zip
PageDelivery : FanFold SameOrderFaceUp SameOrderFaceDown ReverseOrderFaceUp ReverseOrderFaceDown
PatchUsage : Color Ignore Image Technical
Pattern : None S1-generic S-generic R2-generic R2m-DIN R2m-ISO R2m-MIB R2i-US-a R2i-US-b R3-generic R3i-US
    R4-generic R4m-DIN-A4 R4m-DIN-A5 R4m-swedish R4i-US R5-generic R5i-US-a R5i-US-b R5i-US-c R6-generic
    R6m-4h2s R6m-DIN-A5 R7-generic R7i-US-a R7i-US-b R7i-US-c R11m-7h4s P16_9i-rect-0t P12m-rect-0t
    W2_1i-round-0t W2_1i-square-0t W3_1i-square-0t C9.5m-round-0t
PlateTechnology : FlexoAnalogSolvent FlexoAnalogThermal FlexoDigitalSolvent FlexoDigitalThermal
    FlexoDirectEngraving InkJet Thermal UV Visible
PlateType : Exposed Dummy
Polarity : Negative Positive
Policy : All Optimized
Policy2 : All Collect Optimized
PositionPolicy : Exact Free
PreStackMethod : All First None
PreflightLevel : Basic Extended Premium
PreviewFileType : PNG CIP3Multiple CIP3Single
PreviewType : Animation Icon Identification SeparatedThumbNail Separation SeparationRaw Static3D ThumbNail
    Viewable
PrintPreference : Balanced CostEffective Fastest HighestQuality
PrintQuality : High Normal Draft
ProcessColorModel : DeviceCMY DeviceCMYK DeviceGray DeviceN DeviceRGB None
ProductionType : Collect NonCollect
ProgressionOrder : LRCP RLCP RPCL PCRL CPRL
Purpose : Label Separation Verification
QualityBase : Absolute Standard
ReferenceEdge : Bottom Left Pattern Right Top
RenderingIntent : AbsoluteColorimetric ColorSpaceDependent Perceptual RelativeColorimetric Saturation
ResourceDetails : Brief Full
ResponseModes : FireAndForget Reliable Response
RotatePolicy : NoRotate RotateOrthogonal RotateClockwise RotateCounterClockwise
SampleBacking : Black Substrate White
Scope : Allowed Device Estimate Job Present
Scope2 : Lifetime PowerOn Job
Scoring : TwiceScored QuadScored None
ScreeningType : Adaptive AM ErrorDiffusion FM HybridAM-FM HybridAMline-dot
Segmentation : SingleStrip Stripped Tiled
Severity : Event Information Warning Error Fatal
SewingPattern : CombinedStaggered Normal Side Staggered
Shape : Elliptic Rectangular Round
ShapeType : Path Rectangular Round RoundedRectangle
ShapeType2 : Line Path Rectangular Round RoundedRectangle
SheetLay : Center Left Right
SheetType : AccountingSheet ErrorSheet JobSheet SeparatorSheet
SheetUsage : Header Interleaved InterleavedBefore OnError Slip SlipCopy Trailer
ShrinkingMethod : ShrinkCool ShrinkHot
ShutDownType : StandBy Full
Side : Back Front
Side2 : FromInside FromOutside
Sides : OneSided OneSidedBack TwoSidedHeadToFoot TwoSidedHeadToHead
Sides2 : OneSidedFront OneSidedBack TwoSided Unprinted
SizePolicy : Abort ClipToMaxPage CompleteGrid FillGrid FitToPage ReduceToFit Tile
SourceCS : All CalGray Calibrated CalRGB CIEBased CMYK DeviceCMYK DeviceGray DeviceN DeviceRGB DevIndep Gray
    ICCBased ICCCMYK ICCGray ICCLAB ICCRGB Lab RGB Separation YUV
SourceObjects : ImagePhotographic ImageScreenShot LineArt SmoothShades Text
SpotType : Emulated Spot
SpreadType : SinglePage Spread
StapleShape : Butted ClinchOut Crown Eyelet Overlap
Status : Available Unavailable
StitchOrigin : TrimBoxCenter TrimBoxJogSide UntrimmedJogSide
StitchType : Corner Saddle Side
StrappingType : Single Double Cross DoubleCross
TabSetCollationOrder : Forward Reverse
Temperature : Hot Cold
TightBacking : Round RoundBacked Flat FlatBacked
To : Up Down
Transfer : BuyerToPrinterDeliver BuyerToPrinterPickup PrinterToBuyerDeliver PrinterToBuyerPickup
TransferCurveName : Film Plate Press Substrate Proof
TransferFunctionInfo : Preserve Remove Apply
TransformationContext : CollateItem Component StackItem
TrimCover : Back Both Front Neither
UCRandBGInfo : Preserve Remove
URLSchemes : http https
UpdateGranularity : All ChangesOnly
UpdateMethod : Complete CompleteSet Incremental Remove RemoveSet
UpdateMethod2 : Complete Incremental Remove
Usage : Input Output
VariableQuality : Simple Imprint Full
VariableType : OneLine AddressField IdentificationField Area
VarnishArea : Full Spot
VarnishMethod : Blanket Plate Independent
Version : 2.0 2.1 2.2 2.3
VerticalGridDirection : BottomToTop TopToBottom
WhiteBase : Absolute Substrate
WorkStyle : Perfecting Simplex WorkAndBack WorkAndTumble WorkAndTurn
WorkType : Original Alteration Rework
WrappingKind : Band LooseWrap ShrinkWrap
`;
