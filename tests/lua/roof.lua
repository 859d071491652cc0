-- A small gable for tests of roof rules: two planes of 40 ft by 20 ft, rising 9 in 12, so that plan lengths
-- come out even (16 ft from eave to ridge in plan, 1 280 ft² in all). Everything but the roof is left out.
local roof = {}

local plane_text = [==[
    - name: %s
      outline: [[0 ft, 0 ft], [40 ft, 0 ft], [40 ft, 20 ft], [0 ft, 20 ft]]
      edges: %s
      slope: %s
      azimuth: %d°
      plan_origin: %s
      structure: %s
      faces: [%s]
      covering: composition shingle
      covering_fire_class: A
      layers: 1
      age: 5 year
      deck: plywood
      deck_thickness: 1/2 in
      dead_load: 8 psf
      eave_overhang: 12 in
      sheds_onto_lower_roof: no
      snow_guards: no
      framing: {kind: rafter, size: 2x8, species: Douglas Fir-Larch, grade: No. 2, spacing: 16 in, span: 13 ft, first_at: 0 in, ceiling_attached: no, condition: sound, wet_service: no}
      obstructions: %s
]==]

-- What can be asked for: at = {x, y} in inches; columns, rows; length, width of a module; and words below.
function roof.design(o)
  o = o or {}
  local at = o.at or { 60, 12 }
  local rows = {}
  rows[1] = ("  - {name: m, model: T, plane: south, at: [%s in, %s in], orientation: landscape, columns: %d, rows: %d, gap: %s in}")
    :format(at[1], at[2], o.columns or 4, o.rows or 3, o.gap or 0.5)
  for _, more in ipairs(o.more or {}) do rows[#rows + 1] = "  - " .. more end
  local edges = o.edges or "[eave, rake, ridge, rake]"
  return table.concat({
    "title: Test roof",
    "project: {permit_application_date: 2025-06-02}",
    "site: {exposure: C, elevation: 100 ft, risk_category: II, topographic_factor: 1, snow_exposure: partially exposed, wind_borne_debris_region: no, special_wind_region: no}",
    ("building: {dwelling_units: 1, occupancy: %s, eave_height: 10 ft, mean_roof_height: 15 ft, length: %s, width: 32 ft, sprinklers: %s, enclosure: enclosed, heated: yes, ventilated_attic: yes, roof_operations: %s, escape_openings: %s}")
      :format(o.occupancy or "one-family dwelling", o.building_length or "40 ft", o.sprinklers or "none", o.roof_operations or "yes", o.escape or "none"),
    "roof:",
    "  shape: " .. (o.shape or "gable"),
    "  planes:",
    plane_text:format("south", edges, o.slope or "9/12", 180, "[0 ft, 0 ft]", o.structure or "dwelling", o.faces or "street", o.obstructions or "none")
      .. plane_text:format("north", o.north_edges or edges, o.slope or "9/12", 0, "[40 ft, 32 ft]", "dwelling", o.north_faces or "rear", o.north_obstructions or "none"),
    ("module_models: [{name: T, length: %s in, width: %s in, thickness: 1.4 in, weight: 48 lb, uplift_rating: 50 psf, down_rating: 110 psf, rating_basis: design, fire_type: Type 1}]")
      :format(o.length or 72, o.width or 44),
    "module_rows:",
    table.concat(rows, "\n"),
    ("racking: {height_above_roof: %s in, gap_below_modules: %s in, module_gap: 0.5 in, tilt: 0°, weight: 100 lb, mounting: rails, rail_direction: across the slope, rails_per_module: 2, system_fire_class: A}")
      :format(o.height or 6, o.below or 4),
    ("circuits: [{name: run, on_roof: yes, ridge_distance: %s in}]"):format(o.conduit or 100),
    "",
  }, "\n")
end

return roof
