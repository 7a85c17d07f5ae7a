"""Words of old papers that are traps: each stood for several materials.

Source: common practice, no source. The meanings are offered, none is chosen.
"""

from __future__ import annotations

AMBIGUOUS: dict[str, tuple[str, ...]] = {
    "cement": (
        "Portland cement",
        "Roman cement",
        "any adhesive paste (household speech)",
        "a cellulose nitrate adhesive",
    ),
    "pva": ("poly(vinyl acetate) emulsion", "poly(vinyl acetate) resin", "poly(vinyl alcohol)"),
    "pvac": ("poly(vinyl acetate) emulsion", "poly(vinyl acetate) resin"),
    "gum": ("gum arabic", "gum tragacanth", "any plant gum", "any adhesive (household speech)"),
    "glue": ("animal glue", "fish glue", "starch paste", "any adhesive (household speech)"),
    "white glue": ("poly(vinyl acetate) emulsion", "casein glue", "starch paste"),
    "resin": ("a natural resin such as rosin or dammar", "an epoxy", "a polyester", "an acrylic"),
    "varnish": ("a natural resin varnish", "an oil varnish", "a synthetic varnish"),
    "lacquer": ("cellulose nitrate lacquer", "shellac", "East Asian lacquer", "an acrylic lacquer"),
    "plaster": ("gypsum plaster", "lime plaster", "a cement plaster"),
    "putty": ("linseed oil putty", "lime putty", "an epoxy putty", "a polyester putty"),
    "mastic": ("mastic resin", "an oil mastic for joints", "any soft filler"),
    "size": ("animal glue size", "starch size", "resin size"),
    "wax": ("beeswax", "paraffin wax", "microcrystalline wax", "a mixture of wax and resin"),
    "stone cement": (
        "a shellac and stone dust mixture",
        "a polyester stone putty",
        "a lime cement",
    ),
    "silicone": ("a silicone rubber", "an alkoxysilane consolidant", "a silicone resin"),
    "acrylic": ("an acrylic resin in solvent", "an acrylic dispersion", "an acrylic paint"),
}
"""Folded word -> what it may mean."""
