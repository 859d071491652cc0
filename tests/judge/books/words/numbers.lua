return {
  title = "Words for numbers",
  cite = "none",
  about = "roof_plane",
  applies = function(plane) return not same(plane.layers, 6) end,
  check = function(plane, _, design)
    local rise, run = sin(plane.slope), cos(plane.slope)
    shall.be_at_least("Sine and cosine, squared", rise * rise + run * run, 1)
    should.not_exceed("Tangent", tan(plane.slope), 0.5)
    shall.not_exceed("Root of an area", sqrt(plane.age * plane.age), 25 * year)
    shall.be_equal("Root of a number", math.sqrt(plane.layers * plane.layers), plane.layers)
    shall.be_less_than("Distance from twelve", abs(plane.layers - 12), 11.5)
    should.be_more_than("Distance from ten psf", abs(plane.dead_load - 10 * psf), 0.5 * psf, psf)
    shall.not_exceed("The larger of two loads", largest(plane.dead_load, 9 * psf, 3 * psf), 12 * psf)
    shall.be_at_least("The smaller of two", smallest(plane.layers, 2, 3), 1)
    shall.be_at_least("The same in the library", math.min(plane.layers, 2) + math.max(plane.layers, 2), 3)
    shall.be_equal("Down and up", round_up(plane.layers / 2) - round_down(plane.layers / 2), math.ceil(plane.layers / 2) - math.floor(plane.layers / 2))
    shall.not_exceed("Powers of ten", math.log10(math.exp(plane.layers)), 0.9)
    shall.not_exceed("Around", 2 * math.pi * plane.layers - math.abs(-1), 12)
    should.be_less_than("A negative load", -plane.dead_load, -8 * psf, psf)
    shall.be_at_least("A share of itself", plane.dead_load / (2 * plane.dead_load), 0.5)
    shall.be_equal("As told elsewhere", plane.dead_load, design.roof.planes[1].dead_load, psf)
  end,
}
