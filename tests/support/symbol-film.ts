import { closeSync, openSync, writeSync } from 'node:fs';
import bwipjs from 'bwip-js';
import { PNG } from 'pngjs';

/** A symbol on a small white label, as it lies in the picture; lengths in dots of the picture. */
export interface ShownSymbol {
  symbology: 'gs1datamatrix' | 'gs1qrcode';
  /** A bracketed element string. */
  elements: string;
  dotsPerModule: number;
  centre: readonly [x: number, y: number];
  /** How far it moves in a second. */
  drift?: readonly [x: number, y: number];
  /** In degrees, in the plane of the picture. */
  turned?: number;
  /** In degrees, out of that plane: it looks narrower. */
  tilted?: number;
  /** How far the light of a dot spreads. */
  blur?: number;
}

/** A part of a film; without symbols only the table is seen. */
export interface Scene {
  seconds: number;
  symbols: ShownSymbol[];
}

const width = 960;
const height = 540;
const framesPerSecond = 8;
const quietModules = 3;
/** By which a dot is looked at in several places, so that edges are soft as a camera's. */
const samplesPerSide = 3;

const tableGrey = 140;
const inkGrey = 45;
const labelGrey = 215;
const noiseGrey = 8;

/** The modules of a symbol: whether each is dark. Drawn by bwip-js, whose rows stand one after the other. */
interface Modules {
  dark: ArrayLike<number>;
  columns: number;
  rows: number;
}

function modulesOf({ symbology, elements }: ShownSymbol): Modules {
  const [drawn] = bwipjs.raw({ bcid: symbology, text: elements }) as unknown as [
    { pixs: number[]; pixx: number; pixy: number },
  ];
  return { dark: drawn.pixs, columns: drawn.pixx, rows: drawn.pixy };
}

/** How light the picture is at a point of the symbol, in modules from its middle; undefined beside its label. */
function greyAt({ dark, columns, rows }: Modules, x: number, y: number): number | undefined {
  const column = x + columns / 2;
  const row = y + rows / 2;
  const isOnLabel =
    column >= -quietModules &&
    row >= -quietModules &&
    column < columns + quietModules &&
    row < rows + quietModules;
  if (!isOnLabel) return undefined;
  const isInside = column >= 0 && row >= 0 && column < columns && row < rows;
  return isInside && dark[Math.floor(row) * columns + Math.floor(column)] === 1 ? inkGrey : labelGrey;
}

/** The same noise in every run. */
function noise(dot: number, frame: number): number {
  const mixed = Math.imul(dot + 1, 2_654_435_761) ^ Math.imul(frame + 1, 40_503);
  return ((mixed >>> 8) % (2 * noiseGrey + 1)) - noiseGrey;
}

function drawFrame(scene: Scene, second: number, frame: number): Buffer {
  const grey = Buffer.alloc(width * height);
  for (let dot = 0; dot < grey.length; dot += 1) grey[dot] = tableGrey + noise(dot, frame);
  for (const symbol of scene.symbols) drawSymbol(grey, symbol, second, frame);
  return grey;
}

function drawSymbol(grey: Buffer, symbol: ShownSymbol, second: number, frame: number): void {
  const { dotsPerModule, centre, drift = [0, 0], turned = 0, tilted = 0, blur = 0 } = symbol;
  const modules = modulesOf(symbol);
  const middleX = centre[0] + drift[0] * second;
  const middleY = centre[1] + drift[1] * second;
  const cosine = Math.cos((turned * Math.PI) / 180);
  const sine = Math.sin((turned * Math.PI) / 180);
  const narrowed = Math.cos((tilted * Math.PI) / 180);
  const reach = Math.ceil((modules.columns + 2 * quietModules) * dotsPerModule);
  for (let y = Math.floor(middleY - reach); y < middleY + reach; y += 1) {
    for (let x = Math.floor(middleX - reach); x < middleX + reach; x += 1) {
      if (x < 0 || y < 0 || x >= width || y >= height) continue;
      let sum = 0;
      let isSeen = false;
      for (let sample = 0; sample < samplesPerSide ** 2; sample += 1) {
        const across = ((sample % samplesPerSide) + 0.5) / samplesPerSide - 0.5;
        const down = (Math.floor(sample / samplesPerSide) + 0.5) / samplesPerSide - 0.5;
        const fromX = x + across * (1 + blur) - middleX;
        const fromY = y + down * (1 + blur) - middleY;
        const column = (fromX * cosine + fromY * sine) / narrowed / dotsPerModule;
        const found = greyAt(modules, column, (fromY * cosine - fromX * sine) / dotsPerModule);
        isSeen ||= found !== undefined;
        sum += found ?? tableGrey;
      }
      const dot = y * width + x;
      if (isSeen) grey[dot] = Math.round(sum / samplesPerSide ** 2) + noise(dot, frame);
    }
  }
}

/**
 * Writes a film (YUV4MPEG2, grey) as Chromium takes it in place of a camera, which shows it again and again from the
 * moment it is opened.
 */
export function writeFilm(file: string, scenes: Scene[]): void {
  const output = openSync(file, 'w');
  writeSync(output, `YUV4MPEG2 W${width} H${height} F${framesPerSecond}:1 Ip A1:1 C420\n`);
  const noColour = Buffer.alloc((width * height) / 2, 128);
  let frame = 0;
  for (const scene of scenes) {
    for (let index = 0; index < scene.seconds * framesPerSecond; index += 1) {
      writeSync(output, 'FRAME\n');
      writeSync(output, drawFrame(scene, index / framesPerSecond, frame));
      writeSync(output, noColour);
      frame += 1;
    }
  }
  closeSync(output);
}

/** One picture of a scene, as a file of a photo (PNG). */
export function photoOf(scene: Scene): Buffer {
  const grey = drawFrame(scene, 0, 0);
  const picture = new PNG({ width, height });
  for (const [dot, light] of grey.entries()) {
    picture.data.fill(light, dot * 4, dot * 4 + 3);
    picture.data[dot * 4 + 3] = 255;
  }
  return PNG.sync.write(picture);
}
