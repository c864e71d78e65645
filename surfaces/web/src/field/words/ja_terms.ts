// Names of the tables of measured fields and of kinds of work.
export const terms: Record<string, string> = {
  firmness: "硬さ", penetration: "貫入深さ", soil_moisture: "土壌水分", clipping_volume: "刈かす量", height_of_cut: "刈高",
  organic_matter_0_20: "有機物 0～20 mm", organic_matter_20_40: "有機物 20～40 mm", organic_matter_40_60: "有機物 40～60 mm", organic_matter_60_80: "有機物 60～80 mm",
  thatch_depth: "サッチ厚", root_depth: "根の深さ", infiltration: "浸透速度", salinity: "塩分", soil_ph: "土壌pH", soil_temperature: "地温",
  surface_temperature: "表面温度", grass_cover: "芝の被覆", holes_closed: "塞がった穴", disease_cover: "病害面積", ball_marks: "ボールマーク",

  coring: "コアリング", solid_tining: "ムクタイン", needle_tining: "ニードルタイン", slicing: "スライシング", scarifying: "スカリファイング", verticutting: "バーチカルカット",
  grooming: "グルーミング", topdressing: "目砂", injection: "注入", drainage: "排水工事", overseeding: "追播き", turfing: "張芝", rolling: "転圧", mowing: "刈込み",
  brushing: "ブラッシング", blowing: "送風", watering: "散水", feeding: "施肥", growth_regulator: "成長調整剤", wetting_agent: "浸透剤", plant_protection: "病虫害防除", closed: "閉鎖",

  tine_diameter: "タイン径", diameter_measured: "径の測り方", spacing_along: "進行方向の間隔", spacing_across: "横方向の間隔", depth: "深さ", cores: "コア", sand: "砂",
  sand_order: "砂の順番", passes: "回数", heave_angle: "持上げ角", blade_spacing: "刃の間隔", blade_width: "刃の幅", bulk_density: "かさ密度", moisture: "水分", worked_in: "すり込み",
  medium: "注入物", hole_diameter: "穴径", trench_width: "溝幅", trench_spacing: "溝間隔", seed: "種子", seed_kind: "草種", method: "方法", area: "面積", roller_mass: "ローラー質量",
  vibrating: "振動", clippings: "刈かす", brush: "ブラシ", water: "水量", by: "方法", nitrogen: "窒素", phosphorus: "リン", potassium: "カリ", iron: "鉄", form: "形状",
  substance: "成分", rate: "量", against: "対象", reason: "理由",

  frost: "霜", snow: "雪", flood: "冠水", works: "工事", disease: "病害", rest: "養生", other: "その他",
  inside: "内径", outside: "外径", removed: "回収", before: "先", after: "後", dry: "乾", moist: "湿り", brushed: "ブラシ", dragged: "マット引き", blown: "送風", watered: "散水",
  left: "そのまま", air: "空気", broadcast: "散播", slit: "溝播き", dimple: "くぼみ播き", yes: "はい", no: "いいえ", collected: "回収", soft: "軟", stiff: "硬",
  sprinklers: "スプリンクラー", hand: "手", granules: "粒", liquid: "液",
};
