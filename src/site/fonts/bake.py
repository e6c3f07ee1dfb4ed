#!/usr/bin/python3
"""Bake the binder's font from IBM Plex Sans: python3 src/site/fonts/bake.py <unpacked npm package> public/fonts

Needs python3-fonttools and python3-brotli. Same input, same bytes. What it does, and why:
  - the slashed zero becomes the plain zero, since a pattern's figures are copied by hand, and PDF writers know no features;
  - only the signs a drawing needs are kept, hinting and layout features dropped;
  - the font is renamed, as its licence asks of changed copies: the name "Plex" is reserved.
"""
import hashlib
import sys
from pathlib import Path

from fontTools.subset import Options, Subsetter
from fontTools.ttLib import TTFont

SIGNS = "–—‘’“”•…′″−×½¼¾⅛⅜⅝⅞√≈≠≤≥→←↑↓πΔαβθφνσρµ₀₁₂₃₄₅₆₇₈₉²³·✓☐ŒœŠšŽž€"
FAMILY = "Binder Sans"
STYLES = {"Regular": ("400Regular/IBMPlexSans_400Regular.ttf", "binder-sans-400"), "Bold": ("700Bold/IBMPlexSans_700Bold.ttf", "binder-sans-700")}


def slash_zero(font):
    """Let U+0030 show what the `zero` feature would put in its place."""
    gsub = font["GSUB"].table
    lookups = [i for record in gsub.FeatureList.FeatureRecord if record.FeatureTag == "zero" for i in record.Feature.LookupListIndex]
    plain = font.getBestCmap()[0x30]
    for index in lookups:
        for sub in gsub.LookupList.Lookup[index].SubTable:
            sub = getattr(sub, "ExtSubTable", sub)
            swap = sub.mapping[plain]
            for table in font["cmap"].tables:
                if table.isUnicode():
                    table.cmap[0x30] = swap
            return
    raise SystemExit("no slashed zero in this font")


def rename(font, style):
    full = f"{FAMILY} {style}" if style != "Regular" else FAMILY
    postscript = f"BinderSans-{style}"
    new = {1: FAMILY, 2: style, 3: f"{postscript};derived", 4: full, 6: postscript}
    names = font["name"]
    # Copyright, licence and its address stay; trade marks and typographic names go.
    names.names = [n for n in names.names if n.nameID in (0, 5, 13, 14) and n.platformID == 3]
    for identity, text in new.items():
        names.setName(text, identity, 3, 1, 0x409)


def bake(source, target, style):
    font = TTFont(source, recalcTimestamp=False)
    slash_zero(font)
    options = Options()
    options.hinting = False
    options.layout_features = ["kern", "mark", "ccmp"]
    options.name_IDs = ["*"]
    options.notdef_outline = True
    options.recalc_timestamp = False
    wanted = [*range(0x20, 0x7F), *range(0xA0, 0x180), *map(ord, SIGNS)]
    missing = sorted(chr(c) for c in set(wanted) - set(font.getBestCmap()))
    subsetter = Subsetter(options)
    subsetter.populate(unicodes=wanted)
    subsetter.subset(font)
    rename(font, style)
    font.save(f"{target}.ttf")
    font.flavor = "woff2"
    font.save(f"{target}.woff2")
    print(style, "not in the font:", " ".join(missing) or "nothing")


package, folder = Path(sys.argv[1]), Path(sys.argv[2])
for style, (file, name) in STYLES.items():
    bake(package / file, folder / name, style)
for file in sorted(folder.glob("binder-sans-*")):
    print(f"{hashlib.sha256(file.read_bytes()).hexdigest()[:16]} {file.stat().st_size:6} {file.name}")
