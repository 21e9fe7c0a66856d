// Prints what dxf-parser reads: node curves.js FILE... ; for each file its version, then each polyline with its layer,
// whether it is closed, and its vertices as x,y,bulge.
import { readFileSync } from 'node:fs'
import DxfParser from 'dxf-parser'

for (const file of process.argv.slice(2)) {
  const drawing = new DxfParser().parseSync(readFileSync(file, 'utf8'))
  console.log(`file ${drawing.header.$ACADVER} ${Object.keys(drawing.tables.layer.layers).join(' ')}`)
  for (const entity of drawing.entities) {
    const vertices = entity.vertices.map(v => `${v.x},${v.y},${v.bulge ?? 0}`)
    console.log(`${entity.type} ${entity.layer} ${entity.shape} ${vertices.join(' ')}`)
  }
}
