// Reads a model with web-ifc and writes what it counts and draws, for a program that compares.
//   node meshes.js MODEL OUT
// OUT: a line "count CLASS n" for each class and a line "mesh #id corners triangles" for each product drawn;
// OUT.bin: for each mesh in the same order its corners (x y z, metres, z up, float64), then the corners of
// its triangles (int32), little-endian.
import fs from 'node:fs';
import * as WebIFC from 'web-ifc';

// from the 12 of the library up to where a polygon's area is 0.3 % short
const settings = { CIRCLE_SEGMENTS: 48, COORDINATE_TO_ORIGIN: false };

const api = new WebIFC.IfcAPI();
await api.Init();
api.SetLogLevel(WebIFC.LogLevel.LOG_LEVEL_OFF);
const model = api.OpenModel(new Uint8Array(fs.readFileSync(process.argv[2])), settings);
if (model < 0) {
  console.error('web-ifc cannot open it');
  process.exit(1);
}
const lines = [];
for (const { typeID, typeName } of api.GetAllTypesOfModel(model)) {
  lines.push(`count ${typeName.toUpperCase()} ${api.GetLineIDsWithType(model, typeID).size()}`);
}
const chunks = [];
api.StreamAllMeshes(model, (mesh) => {
  const corners = [];
  const triangles = [];
  for (let i = 0; i < mesh.geometries.size(); i++) {
    const placed = mesh.geometries.get(i);
    const geometry = api.GetGeometry(model, placed.geometryExpressID);
    const vertices = api.GetVertexArray(geometry.GetVertexData(), geometry.GetVertexDataSize());
    const indices = api.GetIndexArray(geometry.GetIndexData(), geometry.GetIndexDataSize());
    const first = corners.length / 3;
    const m = placed.flatTransformation;
    for (let v = 0; v < vertices.length; v += 6) {
      const [x, y, z] = [vertices[v], vertices[v + 1], vertices[v + 2]];
      const at = (row) => m[row] * x + m[4 + row] * y + m[8 + row] * z + m[12 + row];
      // web-ifc turns models so that y is up
      corners.push(at(0), -at(2), at(1));
    }
    for (const index of indices) triangles.push(first + index);
    geometry.delete();
  }
  lines.push(`mesh #${mesh.expressID} ${corners.length / 3} ${triangles.length / 3}`);
  chunks.push(Buffer.from(new Float64Array(corners).buffer), Buffer.from(new Int32Array(triangles).buffer));
});
fs.writeFileSync(process.argv[3], lines.join('\n') + '\n');
fs.writeFileSync(process.argv[3] + '.bin', Buffer.concat(chunks));
