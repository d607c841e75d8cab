// A photo of a sheet on a flat or round bottle before tiles: rays of a pinhole, light, noise. Knows nothing of how
// photos are read.

/** Angles in degrees, lengths in pixels of the sheet; light 1 leaves as it is. */
export type Camera = {
  yaw: number;
  pitch: number;
  roll: number;
  quarters: number;
  /** Of the bottle; 0 is flat. */
  radius: number;
  /** Pixels of the photo for one of the sheet. */
  zoom: number;
  /** At the left and at the right. */
  light: [left: number, right: number];
  /** How much of the light is lost towards the bottom. */
  dusk: number;
  /** White in the middle of a spot, 0 … 1. */
  glare: number;
  /** Light that is lost beyond an edge, 0 … 1. */
  shadow: number;
  /** Greys a pixel is off at random, one standard deviation. */
  noise: number;
  blur: number;
  shake: number;
  quality: number;
};

export const plain: Camera = {
  yaw: 0, pitch: 0, roll: 0, quarters: 0, radius: 0, zoom: 0.8, light: [1, 0.9], dusk: 0, glare: 0, shadow: 0,
  noise: 3, blur: 0.6, shake: 0, quality: 0.85,
}; // biome-ignore format: one line a few reads best

/** Runs in a page: the photo as a JPEG data URL of a sheet (data URL of a PNG). */
export async function photographed([sheetUrl, camera]: readonly [string, Camera]): Promise<string> {
  const sheet = new Image();
  sheet.src = sheetUrl;
  await sheet.decode();
  const canvasOf = (width: number, height: number) =>
    Object.assign(document.createElement('canvas'), { width, height });
  const [wide, high] = [1400, 1050];
  const from = canvasOf(sheet.width, sheet.height);
  const fromPen = from.getContext('2d', { willReadFrequently: true })!;
  fromPen.drawImage(sheet, 0, 0);
  const { data: paper } = fromPen.getImageData(0, 0, sheet.width, sheet.height);
  const rad = Math.PI / 180;
  const [cy, sy, cp, sp, cr, sr] = [camera.yaw, camera.pitch, camera.roll].flatMap((a) => [
    Math.cos(a * rad),
    Math.sin(a * rad),
  ]) as [number, number, number, number, number, number];
  /** From the camera's axes to the bottle's. */
  const toBottle = (x: number, y: number, z: number) => {
    const [x1, y1] = [cr * x + sr * y, -sr * x + cr * y];
    const [y2, z2] = [cp * y1 + sp * z, -sp * y1 + cp * z];
    return [cy * x1 - sy * z2, y2, sy * x1 + cy * z2] as const;
  };
  const focal = 1.3 * wide;
  const [ox, oy, oz] = toBottle(0, 0, -focal / camera.zoom);
  const r = camera.radius;
  const out = canvasOf(wide, high);
  const pen = out.getContext('2d', { willReadFrequently: true })!;
  const image = pen.createImageData(wide, high);
  const at = [0, 0, 0];
  /** The sheet at a place, between its pixels; the bottle beside it. */
  const paint = (x: number, y: number) => {
    const [px, py] = [x + sheet.width / 2, y + sheet.height / 2];
    const [x0, y0] = [Math.floor(px), Math.floor(py)];
    if (x0 < 0 || y0 < 0 || x0 >= sheet.width - 1 || y0 >= sheet.height - 1) {
      for (let c = 0; c < 3; c++) at[c] = paper[4 * (3 * sheet.width + 3) + c]!;
      return;
    }
    const [fx, fy] = [px - x0, py - y0];
    for (let c = 0; c < 3; c++) {
      const i = 4 * (y0 * sheet.width + x0) + c;
      const j = i + 4 * sheet.width;
      at[c] =
        (paper[i]! * (1 - fx) + paper[i + 4]! * fx) * (1 - fy) +
        (paper[j]! * (1 - fx) + paper[j + 4]! * fx) * fy;
    }
  };
  const tile = (u: number, v: number) => {
    const grout = (u + 4000) % 210 < 7 || (v + 4000) % 160 < 7;
    at[0] = grout ? 150 : 176;
    at[1] = grout ? 152 : 192;
    at[2] = grout ? 150 : 196;
  };
  const half = sheet.width / 2 + 40;
  for (let v = 0; v < high; v++)
    for (let u = 0; u < wide; u++) {
      const [dx, dy, dz] = toBottle(u - wide / 2, v - high / 2, focal);
      let shade = 1;
      if (r === 0) {
        const t = -oz / dz;
        const x = ox + t * dx;
        if (Math.abs(x) < half) paint(x, oy + t * dy);
        else tile(u, v);
      } else {
        const [a, b, c] = [dx * dx + dz * dz, ox * dx + (oz - r) * dz, ox * ox + (oz - r) ** 2 - r * r];
        const root = b * b - a * c;
        if (root <= 0) tile(u, v);
        else {
          const t = (-b - Math.sqrt(root)) / a;
          const turn = Math.atan2(ox + t * dx, r - (oz + t * dz));
          shade = 0.45 + 0.55 * Math.cos(turn);
          paint(r * turn, oy + t * dy);
        }
      }
      const [across, down] = [u / wide, v / high];
      let light =
        shade * (camera.light[0] + (camera.light[1] - camera.light[0]) * across) * (1 - camera.dusk * down);
      const beyond = (across + 0.25 * down - 0.62) * 60;
      light *= 1 - camera.shadow / (1 + Math.exp(-beyond));
      const gloss = camera.glare * Math.exp(-(((across - 0.6) / 0.12) ** 2) - ((down - 0.45) / 0.16) ** 2);
      const i = 4 * (v * wide + u);
      for (let c = 0; c < 3; c++) image.data[i + c] = at[c]! * light * (1 - gloss) + 255 * gloss;
      image.data[i + 3] = 255;
    }
  pen.putImageData(image, 0, 0);
  const soft = canvasOf(wide, high);
  const softPen = soft.getContext('2d', { willReadFrequently: true })!;
  softPen.filter = `blur(${camera.blur}px)`;
  softPen.drawImage(out, 0, 0);
  softPen.filter = 'none';
  const steps = Math.max(1, Math.round(camera.shake));
  pen.clearRect(0, 0, wide, high);
  for (let n = 0; n < steps; n++) {
    pen.globalAlpha = 1 / (n + 1);
    pen.drawImage(soft, n - steps / 2, (n - steps / 2) * 0.4);
  }
  pen.globalAlpha = 1;
  const pixels = pen.getImageData(0, 0, wide, high);
  let state = 4711;
  const random = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32 - 0.5;
  };
  for (let i = 0; i < pixels.data.length; i++)
    if (i % 4 < 3) pixels.data[i]! += (random() + random() + random()) * 2 * camera.noise;
  pen.putImageData(pixels, 0, 0);
  const upright = camera.quarters % 2 === 0;
  const held = canvasOf(upright ? wide : high, upright ? high : wide);
  const heldPen = held.getContext('2d')!;
  heldPen.translate(held.width / 2, held.height / 2);
  heldPen.rotate((camera.quarters * Math.PI) / 2);
  heldPen.drawImage(out, -wide / 2, -high / 2);
  return held.toDataURL('image/jpeg', camera.quality);
}
