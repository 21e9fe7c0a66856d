// Opens a model with web-ifc; with "rels" as second argument it also reads the properties and systems of
// all segments, fittings and controllers in one pass over the relations. Prints what it found.
import fs from 'node:fs';
import * as WebIFC from 'web-ifc';

const ELEMENTS = [
  'IFCFLOWSEGMENT', 'IFCFLOWFITTING', 'IFCFLOWCONTROLLER',
  'IFCPIPESEGMENT', 'IFCPIPEFITTING', 'IFCDUCTSEGMENT', 'IFCDUCTFITTING', 'IFCVALVE', 'IFCDAMPER',
];

const api = new WebIFC.IfcAPI();
await api.Init();
api.SetLogLevel(WebIFC.LogLevel.LOG_LEVEL_OFF);
const file = fs.openSync(process.argv[2], 'r');
const model = api.OpenModelFromCallback(
  (offset, size) => {
    const bytes = new Uint8Array(size);
    return bytes.subarray(0, fs.readSync(file, bytes, 0, size, offset));
  },
  // web-ifc takes no more than 4 GB
  { MEMORY_LIMIT: 4294967295 },
);

const ids = (type) => {
  const list = api.GetLineIDsWithType(model, type);
  return Array.from({ length: list.size() }, (_, i) => list.get(i));
};
const elements = new Set(ELEMENTS.flatMap((name) => ids(WebIFC[name])));
const found = [`elements=${elements.size}`];

if (process.argv[3] === 'rels') {
  let properties = 0;
  const sets = new Map();
  const countOf = (set) => {
    if (!sets.has(set)) {
      const members = api.GetLine(model, set).HasProperties ?? [];
      sets.set(set, members.filter((p) => api.GetLine(model, p.value).Name.value.length > 0).length);
    }
    return sets.get(set);
  };
  const members = (related) => related.filter((r) => elements.has(r.value)).length;
  for (const id of ids(WebIFC.IFCRELDEFINESBYPROPERTIES)) {
    const rel = api.GetLine(model, id);
    const count = members(rel.RelatedObjects);
    if (count > 0) properties += count * countOf(rel.RelatingPropertyDefinition.value);
  }
  let memberships = 0;
  const systems = new Set();
  for (const id of ids(WebIFC.IFCRELASSIGNSTOGROUP)) {
    const rel = api.GetLine(model, id);
    memberships += members(rel.RelatedObjects);
    systems.add(api.GetLine(model, rel.RelatingGroup.value).Name.value);
  }
  found.push(`properties=${properties}`, `memberships=${memberships}`, `systems=${systems.size}`);
}
console.log(found.join(' '));
