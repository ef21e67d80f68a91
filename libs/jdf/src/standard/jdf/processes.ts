/** Facts of the open standard: the processes and the resources that each may link to; first those of every process */
export const processes = `
every process : ColorPool Tool ApprovalSuccess CustomerInfo Device Employee MiscConsumable NodeInfo Preview
    PreflightReport UsageCounter
Approval : any
Buffer : any
Combine : any
Delivery : any
ManualLabor : any
Ordering{-1.4} : any
Packing{-1.0} : any
QualityControl{1.2-} : any
ResourceDefinition : any
Split : any
Verification : any
DieDesign{1.4-} : DieLayout
DieLayoutProduction{1.4-} : ShapeDef DieLayoutProductionParams DieLayout
DieMaking{1.4-} : DieLayout
ShapeDefProduction{1.4-} : LayoutElement ShapeDefProductionParams ShapeDef
AssetListCreation{1.2-} : AssetListCreationParams RunList
Bending{1.3-} : BendingParams ExposedMedia Media
ColorCorrection : ColorantControl ColorCorrectionParams RunList
ColorSpaceConversion : ColorantControl ColorSpaceConversionParams RunList
ContactCopying : ContactCopyParams DevelopingParams ExposedMedia Media TransferCurvePool
ContoneCalibration : RunList ScreeningParams TransferFunctionControl
CylinderLayoutPreparation{1.3-} : CylinderLayoutPreparationParams Layout RunList CylinderLayout
DBDocTemplateLayout{-1.4} : DBRules DBSchema LayoutElement
DBTemplateMerging{-1.4} : DBMergeParams DBSelection LayoutElement RunList
DigitalDelivery{1.2-} : DigitalDeliveryParams RunList
FilmToPlateCopying{-1.0} : DevelopingParams ExposedMedia Media PlateCopyParams
FormatConversion{-1.4} : FormatConversionParams RunList
ImageEnhancement{1.5-} : ImageEnhancementParams RunList
ImageReplacement : ImageCompressionParams ImageReplacementParams RunList
ImageSetting : ColorantControl DevelopingParams ExposedMedia ImageSetterParams Media RunList
    TransferCurvePool
Imposition : Layout RunList
InkZoneCalculation : InkZoneCalculationParams InkZoneProfile Layout TransferCurvePool Sheet
Interpreting : ColorantControl FontPolicy InterpretedPDLData InterpretingParams PDLResourceAlias RunList
LayoutElementProduction : LayoutElement LayoutElementProductionParams RunList
LayoutPreparation : LayoutPreparationParams RunList Layout TransferCurvePool
LayoutShifting{1.4-} : LayoutShift RunList
PageAssigning{1.4-} : PageAssignParams RunList
PDFToPSConversion : PDFToPSConversionParams RunList
PDLCreation{1.3-} : ImageCompressionParams PDLCreationParams RunList
Preflight : PreflightParams PreflightReportRulePool RunList PreflightReport
PreviewGeneration : ColorantControl ExposedMedia PreviewGenerationParams RunList TransferCurvePool
Proofing{-1.1} : ColorantControl ColorSpaceConversionParams ExposedMedia Layout Media ProofingParams RunList
PSToPDFConversion : FontParams ImageCompressionParams PSToPDFConversionParams RunList
RasterReading{1.3-} : RasterReadingParams RunList
Rendering : Media ImageCompressionParams InterpretedPDLData RenderingParams RunList
Scanning : ExposedMedia ScanParams RunList
Screening : RunList ScreeningParams
Separation : ColorantControl RunList SeparationControlParams
SheetOptimizing{1.5-} : Assembly BinderySignature SheetOptimizingParams StrippingParams
SoftProofing{-1.1} : ColorantControl ColorSpaceConversionParams Layout ProofingParams RunList
Stripping{1.2-} : Assembly ColorantControl RunList StrippingParams TransferCurvePool Layout
Tiling : RunList Tile
Trapping : ColorantControl RunList TrappingDetails FontPolicy
ConventionalPrinting : ColorantControl Component ConventionalPrintingParams ExposedMedia Ink InkZoneProfile
    Layout Media PrintCondition Sheet TransferCurvePool
DigitalPrinting : ColorantControl Component DigitalPrintingParams ExposedMedia Ink PrintCondition Media
    RunList Layout Sheet TransferCurvePool
Varnishing{1.4-} : Component ExposedMedia Ink Media VarnishingParams
IDPrinting{-1.0} : ColorantControl Component ExposedMedia FontPolicy Ink InterpretingParams IDPrintingParams
    Media RenderingParams RunList ScreeningParams TransferFunctionControl
AdhesiveBinding{-1.0} : AdhesiveBindingParams Component
BlockPreparation : Component BlockPreparationParams
BoxFolding{1.3-} : Component BoxFoldingParams
BoxPacking : BoxPackingParams Component Media
Bundling{1.2-} : Component BundlingParams Media
CaseMaking : Component CaseMakingParams Media
CasingIn : Component CasingInParams
ChannelBinding : ChannelBindingParams Component
CoilBinding : CoilBindingParams Component
Collecting : Assembly CollectingParams Component DBRules DBSelection IdentificationField
CoverApplication : Component CoverApplicationParams
Creasing : CreasingParams Component
Cutting : Component CutBlock CutMark CuttingParams Media
Dividing{-1.0} : Component DividingParams
Embossing : Component EmbossingParams Media
EndSheetGluing : Component EndSheetGluingParams
Feeding{1.2-} : Component FeedingParams Media
Folding : Component FoldingParams
GangPreparation{1.7-} : Assembly BinderySignature GangPreparationParams SheetOptimizingParams
Gathering : Assembly Component DBRules DBSelection GatheringParams IdentificationField
Gluing : Component GluingParams
HeadBandApplication : Component HeadBandApplicationParams
HoleMaking : Component HoleMakingParams
Inserting : Component DBRules DBSelection IdentificationField InsertingParams
Jacketing : Component JacketingParams
Labeling : Component LabelingParams
Laminating : Component LaminatingParams Media
LongitudinalRibbonOperations{-1.0} : Component LongitudinalRibbonOperationParams
Numbering{-1.4} : Component NumberingParams
Palletizing : Component PalletizingParams Pallet
Perforating : PerforatingParams Component
PlasticCombBinding : Component PlasticCombBindingParams
PrintRolling{1.2-} : Component PrintRollingParams RollStand
RingBinding : Component RingBindingParams
SaddleStitching{-1.0} : Component SaddleStitchingParams
ShapeCutting : Component ShapeCuttingParams
Shrinking : Component ShrinkingParams
SideSewing{-1.0} : Component SideSewingParams
SpinePreparation : Component SpinePreparationParams
SpineTaping : Component SpineTapingParams
Stacking : Component StackingParams
StaticBlocking : Component StaticBlockingParams
Stitching : Component StitchingParams
Strapping : Component StrappingParams Strap
StripBinding : Component StripBindingParams
ThreadSealing : Component ThreadSealingParams
ThreadSewing : Component ThreadSewingParams
Trimming : Component TrimmingParams
WebInlineFinishing{1.3-} : Assembly Component ProductionPath StrippingParams WebInlineFinishingParams
Winding{1.5-} : Component Media WindingParams
WireCombBinding : Component WireCombBindingParams
Wrapping : Component Media WrappingParams
`;
