/**
 * Facts of the open standard: what each process takes and makes. A row is the process, its inputs, ">" and its outputs;
 * a link is `Name(ProcessUsage)` with how often it may occur: once, `?` at most once, `*` any number, `+` at least once,
 * `{1,2}` from 1 to 2, and in braces the versions it is restricted to. `any` is a link to a resource of any name.
 * Source: the Constraint and Version notes of the official JDF 1.9 schema (JDFProcess), by which this table is tested;
 * where they contradict the links that the same schema lets stand in the pool, the pool is followed.
 */
export const processLinks = `
AdhesiveBinding{-1.0} : AdhesiveBindingParams Component(BookBlock) Component(Cover)? > Component
Approval : ApprovalParams any* > ApprovalSuccess any(Accepted)* any(Rejected)*
AssetListCreation{1.2-} : RunList AssetListCreationParams > RunList
Bending{1.3-} : BendingParams ExposedMedia? Media? > ExposedMedia? Media?
BlockPreparation{1.1-} : BlockPreparationParams Component > Component
BoxFolding{1.3-} : Component BoxFoldingParams Component(Application)*{-1.3} > Component
BoxPacking{1.1-} : Component Media(Tie)?{1.3-} Media(Underlay)?{1.3-} BoxPackingParams Component(Box)? >
    Component
Buffer{1.1-} : BufferParams any > any
Bundling{1.2-} : Component BundlingParams? Media? > Component
CaseMaking{1.1-} : Component(CoverMaterial)? CaseMakingParams Media(CoverMaterial)? Media(CoverBoard)
    Media(SpineBoard)? > Component
CasingIn{1.1-} : CasingInParams Component Component(Case) > Component
ChannelBinding : Component(BookBlock) Component(Cover)? ChannelBindingParams > Component
CoilBinding : Component CoilBindingParams > Component
Collecting : Assembly?{1.3-} CollectingParams? Component+ DBRules*{-1.4} DBSelection?{-1.4}
    IdentificationField?{-1.1} > Component
ColorCorrection : ColorantControl? ColorCorrectionParams{1.1-} RunList > RunList
ColorSpaceConversion : ColorantControl? ColorSpaceConversionParams RunList > ColorantControl? RunList
Combine : any+ > any
ContactCopying{1.1-} : ContactCopyParams DevelopingParams? ExposedMedia+ Media TransferCurvePool? >
    ExposedMedia
ContoneCalibration : RunList ScreeningParams? TransferFunctionControl? > RunList
ConventionalPrinting : ColorantControl? Component* Component(Proof)? ConventionalPrintingParams
    ExposedMedia(Proof)? ExposedMedia(Plate)? ExposedMedia(Cylinder)?{1.3-} Ink? InkZoneProfile?
    Layout?{1.1-} Media* PrintCondition?{1.2-} RunList? Sheet?{-1.0} TransferCurvePool?{1.1-} > Component
    Component(Waste)?{-1.1}
CoverApplication{1.1-} : CoverApplicationParams Component Component(Cover)? > Component
Creasing{1.1-} : Component CreasingParams > Component
Cutting : Component? CutBlock*{-1.0} CutMark*{-1.0} CuttingParams{1.1-} Media? > Component+
CylinderLayoutPreparation{1.3-} : CylinderLayoutPreparationParams Layout RunList? > CylinderLayout
DBDocTemplateLayout{-1.4} : LayoutElement* DBRules DBSchema > LayoutElement*
DBTemplateMerging{-1.4} : DBMergeParams DBSelection LayoutElement* > RunList
Delivery : DeliveryParams any?{-1.1} > any+
DieDesign{1.4-} : DieLayout > DieLayout+
DieLayoutProduction{1.4-} : ShapeDef+ DieLayoutProductionParams > DieLayout+
DieMaking{1.4-} : DieLayout > Tool+
DigitalDelivery{1.2-} : RunList DigitalDeliveryParams > RunList
DigitalPrinting : ColorantControl? Component(Input)* Component(Proof)? DigitalPrintingParams ExposedMedia?
    Ink? Layout?{1.1-} Media* PrintCondition? RunList Sheet?{-1.0} TransferCurvePool?{1.1-} > Component
    Component(Waste)?{-1.1}
Dividing{-1.0} : Component DividingParams > Component
Embossing{1.1-} : Component EmbossingParams Media* Tool* > Component
EndSheetGluing : Component(BackEndSheet)? Component(BookBlock)? Component(FrontEndSheet)
    EndSheetGluingParams > Component
Feeding{1.2-} : Component* FeedingParams Media* > Component* Media*
FilmToPlateCopying{-1.0} : DevelopingParams? ExposedMedia Media PlateCopyParams > ExposedMedia
Folding : Component FoldingParams > Component
FormatConversion{1.1-1.4} : FormatConversionParams RunList > RunList
GangPreparation{1.7-} : GangPreparationParams > Assembly* BinderySignature? SheetOptimizingParams
Gathering : Assembly?{1.3-} Component+ GatheringParams DBRules*{-1.4} DBSelection?{-1.4}
    IdentificationField?{-1.1} > Component
Gluing{1.1-} : Component GluingParams > Component
HeadBandApplication{1.1-} : Component HeadBandApplicationParams > Component
HoleMaking : Component HoleMakingParams > Component
IDPrinting{-1.0} : ColorantControl? Component(Cover)? Component(Input)? Component(Proof)? ExposedMedia?
    FontPolicy? Ink? InterpretingParams* IDPrintingParams? Media? RenderingParams? RunList ScreeningParams?
    TransferFunctionControl? > Component(Good) Component(Waste)?
ImageEnhancement{1.5-} : ImageEnhancementParams RunList > RunList
ImageReplacement : ImageCompressionParams?{1.1-} ImageReplacementParams RunList > RunList
ImageSetting : ExposedMedia?{1.3-} ColorantControl?{1.2-} DevelopingParams?{1.1-} ImageSetterParams? Media
    RunList TransferCurvePool?{1.1-} > ExposedMedia{1.3-}
Imposition : Layout RunList(Document) RunList(Marks)? > RunList
InkZoneCalculation : InkZoneCalculationParams Layout?{1.1-} Preview Sheet?{-1.0} TransferCurvePool? >
    InkZoneProfile
Inserting : Component Component(Child) InsertingParams DBRules?{-1.4} DBSelection?{-1.4}
    IdentificationField?{-1.1} > Component
Interpreting : ColorantControl? FontPolicy? InterpretingParams PDLResourceAlias* RunList >
    InterpretedPDLData?{-1.1} RunList?{1.2-}
Jacketing{1.1-} : JacketingParams Component(Book) Component(Jacket) > Component
Labeling{1.1-} : Component Component(Label)? LabelingParams > Component
Laminating : Component LaminatingParams Media? > Component
LayoutElementProduction : LayoutElementProductionParams? LayoutElement* > LayoutElement? RunList?
LayoutPreparation{1.1-} : LayoutPreparationParams RunList(Document)? RunList(Marks)? > Layout
    RunList(Marks)? TransferCurvePool?
LayoutShifting{1.4-} : LayoutShift RunList > RunList
LongitudinalRibbonOperations{-1.0} : Component LongitudinalRibbonOperationParams > Component+
ManualLabor{1.1-} : ManualLaborParams any* > any+
Numbering{-1.4} : Component NumberingParams > Component
Ordering{-1.4} : OrderingParams > any+
Packing{-1.0} : PackingParams any > any
PageAssigning{1.4-} : PageAssignParams RunList+ > RunList
Palletizing{1.1-} : Component+ PalletizingParams Pallet > Component
PDFToPSConversion : PDFToPSConversionParams RunList > RunList
PDLCreation{1.3-} : ImageCompressionParams? PDLCreationParams RunList > RunList
Perforating{1.1-} : Component PerforatingParams > Component
PlasticCombBinding : Component PlasticCombBindingParams > Component
Preflight : PreflightParams PreflightReportRulePool? RunList > PreflightReport
PreviewGeneration : ColorantControl?{1.1-} ExposedMedia? Preview?{1.1-} PreviewGenerationParams RunList?
    TransferCurvePool?{1.1-} > Preview{1.1-}
PrintRolling{1.2-} : Component PrintRollingParams? RollStand? > Component
Product : Component* Component(Cover)? Component(Parent)? Component(Jacket)? ArtDeliveryIntent?
    BindingIntent? ColorIntent? DeliveryIntent? EmbossingIntent? FoldingIntent? HoleMakingIntent?
    InsertingIntent? LaminatingIntent? LayoutIntent? MediaIntent? NumberingIntent? PackingIntent?
    ProductionIntent? ProofingIntent? ScreeningIntent? ShapeCuttingIntent? SizeIntent?{-1.1} VariableIntent?{1.6-} >
    Component+
Proofing{-1.1} : ColorantControl? ColorSpaceConversionParams? Layout? Media ProofingParams RunList(Document)
    RunList(Marks)? > ExposedMedia
PSToPDFConversion : FontParams? ImageCompressionParams? PSToPDFConversionParams? RunList > RunList
QualityControl{1.2-} : any ColorantControl?{1.7-} Layout?{1.7-} QualityControlParams QualityControlResult? >
    any QualityControlResult?
RasterReading{1.3-} : RasterReadingParams? RunList > RunList
Rendering : Media?{-1.0} ImageCompressionParams?{1.5-} InterpretedPDLData?{-1.1} RenderingParams?
    RunList?{1.2-} > RunList{1.2-}
ResourceDefinition : ResourceDefinitionParams? any* > any+
RingBinding : Component Component(RingBinder)? RingBindingParams > Component
SaddleStitching{-1.0} : Component SaddleStitchingParams > Component
Scanning : ExposedMedia ScanParams > RunList
Screening : RunList ScreeningParams > RunList
Separation : ColorantControl? RunList SeparationControlParams > RunList
ShapeCutting{1.1-} : Component ShapeCuttingParams Tool? > Component
ShapeDefProduction{1.4-} : LayoutElement? ShapeDefProductionParams > ShapeDef+
SheetOptimizing{1.5-} : Assembly* BinderySignature?{1.6-} SheetOptimizingParams? > StrippingParams?
Shrinking{1.1-} : Component ShrinkingParams > Component
SideSewing{-1.0} : Component SideSewingParams > Component
SoftProofing{-1.1} : ColorantControl? ColorSpaceConversionParams? Layout? ProofingParams RunList(Document)
    RunList(Marks)? >
SpinePreparation{1.1-} : Component SpinePreparationParams > Component
SpineTaping{1.1-} : Component SpineTapingParams > Component
Split : any > any+
Stacking{1.1-} : Component StackingParams > Component
StaticBlocking{1.1-} : Component StaticBlockingParams > Component
Stitching : Component StitchingParams > Component
Strapping{1.1-} : Component StrappingParams Strap? > Component
StripBinding{1.1-} : Component StripBindingParams > Component
Stripping{1.2-} : ColorantControl?{1.3-} StrippingParams RunList(Document)? TransferCurvePool? Assembly+ >
    Layout RunList(Document)? RunList(Marks)?
ThreadSealing{1.1-} : Component ThreadSealingParams > Component
ThreadSewing : Component ThreadSewingParams > Component
Tiling : RunList(Surface) RunList(Marks)? Tile > RunList
Trapping : ColorantControl? FontPolicy?{1.1-} RunList TrappingDetails > RunList
Trimming : Component TrimmingParams > Component
Varnishing{1.4-} : Component? ExposedMedia* Ink? Media? VarnishingParams? > Component
Verification : DBSchema?{-1.4} DBSelection?{-1.4} IdentificationField*{-1.4} any?{1.2-} VerificationParams >
    ApprovalSuccess? DBSelection?{-1.4} any?{1.2-}
WebInlineFinishing{1.3-} : Assembly? Component ProductionPath? StrippingParams? WebInlineFinishingParams? >
    Component
Winding{1.5-} : Component Media? WindingParams? > Media(Core)? Component
WireCombBinding : Component WireCombBindingParams > Component
Wrapping{1.1-} : Component{1,2} WrappingParams Media?{-1.5} MiscConsumable?{1.6-} > Component
`;

/** What every process may take besides. Source: the same schema, group ProcessInputResources_. */
export const everyProcessTakes = [
  'ApprovalSuccess',
  'ColorPool',
  'CustomerInfo',
  'Device',
  'Employee',
  'MiscConsumable',
  'NodeInfo',
  'PreflightReport',
  'Preview',
  'Tool',
  'UsageCounter',
] as const;
