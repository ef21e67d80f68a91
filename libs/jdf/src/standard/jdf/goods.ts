/** Facts of the open standard: consumables, what is made, tools, machines and people. Notation: ../notation.ts. */
export const goods = `
Ink : Consumable
  string: ColorName{-1.3} InkName
  NMTOKEN: Family SpecialInk
  double: SpecificYield
  > Contact*& IdentificationField*& Location*
    Certification*[root]{1.7-}
Media : Consumable
  double: BackBrightness{1.5-} BackGlossValue{1.2-} BackOpticalBrightening{1.9-} Brightness CIETint{1.2-}
    CIEWhiteness{1.2-} CoreWeight{1.3-} FrontGlossValue{1.2-} InnerCoreDiameter{1.4-} InsideLoss{1.3-}
    OpacityLevel{1.2-} OpticalBrightening{1.9-} OuterCoreDiameter{1.3-} OutsideGain{1.3-}
    RecycledPercentage{1.2-} ReliefThickness{1.4-} RollDiameter Thickness Weight WrapperWeight{1.3-}
  NMTOKEN: BackCoatingDetail{1.4-} Flute{1.3-} FrontCoatingDetail{1.4-} MediaTypeDetails
    PrintingTechnology{1.4-} SleeveInterlock{1.4-1.8} StockType Texture UserMediaType{-1.0}
  Coatings: BackCoatings FrontCoatings
  MediaSubstrateType: BackISOPaperSubstrate{1.6-} ISOPaperSubstrate{1.5-}
  TransferFunction: BackSpectrum{1.7-} Spectrum{1.7-}
  string: ColorName{-1.1} MediaColorNameDetails{1.2-} MediaQuality{1.4-}
  XYPair: Dimension ShrinkIndex
  MediaDirection: FluteDirection{1.3-} GrainDirection
  Integer: Grade{-1.5} HoleCount{-1.0} MediaSetCount
  ImagableSide: ImagableSide
  LabColor: LabColorValue{1.2-}
  NamedColor: MediaColorName
  MediaType: MediaType
  Opacity: Opacity
  PlateTechnology: PlateTechnology{1.3-}
  Polarity: Polarity
  boolean: Recycled{-1.1} PrePrinted=false
  HoleType1[]: HoleType=None
  MediaUnit: MediaUnit=Sheet
  > Contact*& IdentificationField*& Location* Certification*{1.6-}
    Color?&{-1.0} ColorMeasurementConditions?&{1.2-} MediaLayers?{1.3-} HoleList?{1.2-} TabDimensions*
MiscConsumable : Consumable{1.3-}
  NamedColor: Color{1.6-}
  string: ColorDetails{1.6-}
  NMTOKEN: ConsumableType TypeDetails{1.6-}
  > Contact*& IdentificationField*& Location*
    Certification*[root]{1.7-}
Pallet : Consumable
  XYPair: Size
  NMTOKEN: PalletType!
  > Contact*& IdentificationField*& Location*
RegisterRibbon : Consumable
  double: LengthOverall VisibleLength
  string: Material RibbonColorDetails
  NamedColor: RibbonColor
  NMTOKEN: RibbonEnd
  > Contact*& IdentificationField*& Location* SourceResource* QualityControlResult*&
Strap : Consumable
  NamedColor: StrapColor
  Material1: Material!
  string: StrapColorDetails[part]{1.4-}
  > Contact*& IdentificationField*& Location* SourceResource* QualityControlResult*&
UsageCounter : Consumable{1.3-}
  NMTOKENS: CounterTypes
  string: CounterID
  Scope: Scope!
Bundle : Quantity
  Integer: FolioCount ReaderPageCount SheetCount{1.5-} TotalAmount
  BundleType: BundleType=Stack
  > Contact*& IdentificationField*& Location* BundleItem*
Bundle/BundleItem
  Integer: Amount!
  NMTOKEN: ItemName
  Orientation: Orientation
  matrix: Transformation
  > Component*&
Component : Quantity
  NMTOKENS: AssemblyIDs{1.3-}
  Automation: Automation{1.5-}
  XYPair: CartonTopFlaps{1.3-}
  Integer: Columns{1.5-} ReaderPageCount SurfaceCount WindingResult{1.5-}
  shape: Dimensions
  boolean: IsWaste{-1.3}
  double: MaxHeat Overfold SpineThickness{1.4-}
  Side: OverfoldSide
  IntegerRangeList: PageListIndex{1.3-}
  NMTOKEN: ProductType
  string: ProductTypeDetails{1.3-} SourceRibbon{-1.2} SourceSheet{-1.2} SourceWeb{-1.2}
  rectangle: SheetPart
  matrix: Transformation{-1.0}
  ComponentType[]: ComponentType!
  > Contact*& IdentificationField*& Location* Assembly?&{1.3-}
    Bundle?& Disjointing? Sheet?&{-1.1} Layout?&{1.2-} Media?&{1.4-} PageList?&{1.3-} SurfaceMark*{1.9-}
DigitalMedia : Handling{1.2-}
  Integer: Capacity
  string: MediaLabel MediaTypeDetails
  NMTOKEN: MediaType!
  > Contact*& IdentificationField*& Location* RunList?&
ExposedMedia : Handling
  ExposedMediaColorType: ColorType
  IntegerRangeList: PageListIndex{1.3-}
  PlateType: PlateType{1.3-}
  string: ProofName{1.2-} PunchType
  ExposedMediaProofQuality: ProofQuality
  ExposedMediaProofType: ProofType
  XYPair: Resolution
  boolean: Polarity=true
  > Contact*& IdentificationField*& Location* FileSpec*& Media&
    PageList?&{1.3-} ScreeningParams?&
RollStand : Handling{1.2-}
  double: MaxDiameter MaxWidth
  > Contact*& IdentificationField*& Location* SourceResource* QualityControlResult*& Device?&
Tool : Handling
  Integer: ToolAmount{-1.2}
  NMTOKEN: ToolType
  shortString: ToolID{-1.2} SerialNumber{1.8-}
  > Contact*& IdentificationField*& Location* SourceResource* QualityControlResult*&
Device : Implementation
  NMTOKENS: DeviceClass{1.5-} ICSVersions{1.3-}
  string: DeviceFamily{-1.0} DeviceID DeviceType FriendlyName{-1.3} Manufacturer ManufacturerURL
    ModelDescription ModelName ModelNumber ModelURL PresentationURL Revision{1.6-} SerialNumber UPC
  URL: Directory JDFErrorURL{1.2-} JDFInputURL{1.2-} JDFOutputURL{1.2-} JMFURL SecureJMFURL{1.3-}
  JDFJMFVersion[]: JDFVersions
  shortString: JMFSenderID
  languages: KnownLocalizations{1.2-}
  double: MaxRunSpeed{1.7-}
  > CostCenter? DeviceCap* IconList? Location?[root]{1.4-}
    Module*{1.3-}
Device/IconList/Icon
  XYPair: Size!
  Integer: BitDepth!
  IconType[]: IconUsage
  > FileSpec
Device/IconList
  > Icon+
Device/Module{1.3-}
  string: DeviceType Manufacturer ManufacturerURL ModelDescription ModelName ModelNumber ModelURL ModuleID
    Revision{1.6-} SerialNumber
  Integer: ModuleIndex SubModuleIndex
  NMTOKEN: ModuleType
  > Module*:Device/Module
Employee : Implementation
  shortString: PersonalID
  NMTOKENS: Roles{1.2-}
  string: Shift
  > CostCenter? Person? PersonRef*[root]
PlaceHolderResource : PlaceHolder{-1.4}
`;
