-- Each pair says one amount in two units.
return {
  title = "Words for units",
  cite = "none",
  about = "design",
  check = function(design)
    local n = design.modules:count() + 1
    local pairs_of = {
      { n * ft, 12 * n * inch }, { n * yd, 3 * n * ft }, { n * mi, 1760 * n * yd }, { n * m, 1000 * n * mm }, { n * km, 100000 * n * cm },
      { n * sq_ft, 144 * n * sq_in }, { n * sq_m, n * m * m }, { n * kg, n / 0.45359237 * lb }, { n * h, 60 * n * min }, { n * min, 60 * n * s },
      { n * day, 24 * n * h }, { n * year, 365.25 * n * day }, { n * A, 1000 * n * mA }, { n * kA, 1000 * n * A }, { n * V, 1000 * n * mV },
      { n * kV, 1000 * n * V }, { n * kW, 1000 * n * W }, { n * kVA, 1000 * n * VA }, { n * VA, n * V * A }, { n * V / A, n * ohm },
      { n * kWh, 1000 * n * Wh }, { n * Wh, n * W * h }, { n * kip, 1000 * n * lbf }, { n * kN, 1000 * n * N }, { n * plf, n * lbf / ft },
      { n * psi, 144 * n * psf }, { n * ksi, 1000 * n * psi }, { n * kPa, 1000 * n * Pa }, { n * Pa, n * N / sq_m }, { n * pcf * ft, n * psf },
      { n * mph, n * mi / h }, { 180 * n * deg, n * math.pi / 4 * 720 / math.pi * deg }, { n * delta_C, 1.8 * n * delta_F },
      { celsius(n), fahrenheit(1.8 * n + 32) }, { celsius(n) - celsius(0), n * delta_C }, { celsius(n) + 2 * delta_C, celsius(n + 2) },
    }
    for i, pair in ipairs(pairs_of) do shall.be_equal(format("Pair %d", i), pair[1], pair[2]) end
    -- What is not the same has a margin, in a unit of neither.
    shall.not_exceed("Yards against metres", n * yd, 30 * m, ft)
    should.be_at_least("Degrees against degrees", fahrenheit(n), celsius(-10))
    shall.not_exceed("Degrees apart", celsius(n) - fahrenheit(32), 20 * delta_F)
    shall.be_less_than("Momentum", n * kg * m / s, 30 * kg * m / s)
  end,
}
