// Names of the tables of measured fields and of kinds of work.
export const terms: Record<string, string> = {
  firmness: "Firmeza", penetration: "Penetración", soil_moisture: "Humedad del suelo", clipping_volume: "Volumen de restos de siega",
  height_of_cut: "Altura de corte", organic_matter_0_20: "Materia orgánica 0 a 20 mm", organic_matter_20_40: "Materia orgánica 20 a 40 mm",
  organic_matter_40_60: "Materia orgánica 40 a 60 mm", organic_matter_60_80: "Materia orgánica 60 a 80 mm", thatch_depth: "Espesor de colchón",
  root_depth: "Profundidad de raíz", infiltration: "Infiltración", salinity: "Salinidad", soil_ph: "pH del suelo",
  soil_temperature: "Temperatura del suelo", surface_temperature: "Temperatura de superficie", grass_cover: "Cobertura de césped",
  holes_closed: "Agujeros cerrados", disease_cover: "Superficie enferma", ball_marks: "Piques",

  coring: "Pinchado hueco", solid_tining: "Pinchado macizo", needle_tining: "Pinchado de aguja", slicing: "Corte con cuchillas", scarifying: "Escarificado",
  verticutting: "Siega vertical", grooming: "Peinado fino", topdressing: "Recebo", injection: "Inyección", drainage: "Drenaje", overseeding: "Resiembra",
  turfing: "Reposición de tepe", rolling: "Rulado", mowing: "Siega", brushing: "Cepillado", blowing: "Soplado", watering: "Riego", feeding: "Abonado",
  growth_regulator: "Regulador de crecimiento", wetting_agent: "Humectante", plant_protection: "Fitosanitario", closed: "Cerrado",

  tine_diameter: "Diámetro de púa", diameter_measured: "Diámetro medido", spacing_along: "Separación a lo largo", spacing_across: "Separación a lo ancho",
  depth: "Profundidad", cores: "Tacos", sand: "Arena", sand_order: "Orden de la arena", passes: "Pasadas", heave_angle: "Ángulo de levantado",
  blade_spacing: "Separación de cuchillas", blade_width: "Ancho de cuchilla", bulk_density: "Densidad aparente", moisture: "Humedad", worked_in: "Incorporada",
  medium: "Medio", hole_diameter: "Diámetro de agujero", trench_width: "Ancho de zanja", trench_spacing: "Separación de zanjas", seed: "Semilla",
  seed_kind: "Especie", method: "Método", area: "Superficie", roller_mass: "Peso del rulo", vibrating: "Vibrante", clippings: "Restos", brush: "Cepillo",
  water: "Agua", by: "Cómo", nitrogen: "Nitrógeno", phosphorus: "Fósforo", potassium: "Potasio", iron: "Hierro", form: "Forma", substance: "Producto",
  rate: "Dosis", against: "Contra", reason: "Motivo",

  frost: "helada", snow: "nieve", flood: "inundación", works: "obras", disease: "enfermedad", rest: "descanso", other: "otro",
  inside: "interior", outside: "exterior", removed: "retirados", before: "antes", after: "después", dry: "seca", moist: "húmeda", brushed: "cepillada",
  dragged: "arrastrada", blown: "soplada", watered: "regada", left: "dejado", air: "aire", broadcast: "a voleo", slit: "en surco", dimple: "en hoyuelo",
  yes: "sí", no: "no", collected: "recogidos", soft: "blando", stiff: "duro", sprinklers: "aspersores", hand: "a mano", granules: "gránulos", liquid: "líquido",
};
