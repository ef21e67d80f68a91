import { artDeliveryIntent } from './art-delivery-intent.js';
import { bindingIntent } from './binding-intent.js';
import { colorIntent } from './color-intent.js';
import {
  numberingIntent,
  proofingIntent,
  publishingIntent,
  screeningIntent,
  variableIntent,
} from './content-intents.js';
import { deliveryIntent } from './delivery-intent.js';
import { foldingIntent } from './folding-intent.js';
import { insertingIntent, packingIntent, productionIntent } from './handling-intents.js';
import { holeMakingIntent } from './hole-making-intent.js';
import { layoutIntent, sizeIntent } from './layout-intent.js';
import { mediaIntent } from './media-intent.js';
import { embossingIntent, laminatingIntent, shapeCuttingIntent } from './surface-intents.js';

/** The typed view of every product intent, by its name. Source: the official JDF 1.9 schema (JDFResource). */
export const productIntents = {
  ArtDeliveryIntent: artDeliveryIntent,
  BindingIntent: bindingIntent,
  ColorIntent: colorIntent,
  DeliveryIntent: deliveryIntent,
  EmbossingIntent: embossingIntent,
  FoldingIntent: foldingIntent,
  HoleMakingIntent: holeMakingIntent,
  InsertingIntent: insertingIntent,
  LaminatingIntent: laminatingIntent,
  LayoutIntent: layoutIntent,
  MediaIntent: mediaIntent,
  NumberingIntent: numberingIntent,
  PackingIntent: packingIntent,
  ProductionIntent: productionIntent,
  ProofingIntent: proofingIntent,
  PublishingIntent: publishingIntent,
  ScreeningIntent: screeningIntent,
  ShapeCuttingIntent: shapeCuttingIntent,
  SizeIntent: sizeIntent,
  VariableIntent: variableIntent,
};
