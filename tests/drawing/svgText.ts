import type { Drawing } from "../../src/drawing/model.ts";
import { svgPen } from "../../src/drawing/svgPath.ts";

const LOOK = {
  outline: 'fill="none" stroke="#000" stroke-width="0.5"',
  thin: 'fill="none" stroke="#000" stroke-width="0.25"',
  dimension: 'fill="none" stroke="#000" stroke-width="0.25"',
  hidden: 'fill="none" stroke="#000" stroke-width="0.25" stroke-dasharray="2.2 0.8"',
  centre: 'fill="none" stroke="#000" stroke-width="0.25" stroke-dasharray="5 0.8 0.3 0.8"',
  arrow: 'fill="#000"',
};

/** A drawing as a picture of its own, one stroke or label a line, so that a change can be read and looked at. */
export function svgText(drawing: Drawing): string {
  const pen = svgPen(drawing);
  const lines = [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${pen.viewBox}" width="${pen.widthMm}mm" height="${pen.heightMm}mm">`,
    `<title>${drawing.title}</title>`,
    `<rect width="100%" height="100%" fill="#fff"/>`,
    ...drawing.strokes.map(({ kind, shape }) => `<path ${LOOK[kind]} d="${pen.d(shape)}"/>`),
    ...drawing.labels.map((label) => {
      const { size, dy, transform } = pen.lettering(label);
      const place = `transform="${transform}" dy="${dy}" text-anchor="${label.anchor}" font-size="${size}"`;
      return `<text ${place} font-family="sans-serif">${label.text}</text>`;
    }),
    "</svg>",
  ];
  return lines.join("\n") + "\n";
}
