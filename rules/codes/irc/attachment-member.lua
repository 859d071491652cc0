---@type plumbrule.Rule
return {
  title = "Attachments stand on what carries them",
  cite = "R324.4.1; NDS 12.5.1 (edge distance, from memory)",
  about = "roof_plane",
  applies = function(plane) return plane.modules:count() > 0 end,
  check = function(plane, book, design)
    shall.be_equal("Modules that no attachment carries", plane:unsupported_modules(), 0)
    local racking = design.racking
    if racking.mounting:is("rails", "shared rails") then
      shall.be_equal(format("Modules with fewer than %d rails below them", racking.rails_per_module), plane:modules_short_of_rails(racking.rails_per_module), 0)
      local share, apart, module = plane:least_rail_spread()
      if share < book.rail_spread_least then
        review(format("The rails below module %s lie %s apart, %.0f %% of its size across them: ask the maker where it may be clamped", module, apart, 100 * share))
      end
    end
    if racking.mounting:is("ballasted") then
      review("A ballasted array stays by its weight and friction: an engineer judges wind, earthquake and the roof below, whatever attachments it has")
    elseif racking.mounting:is("building-integrated", "ground") then
      review(format("The racking is called %s, but modules and attachments of it lie on this roof: say how they are held", racking.mounting))
    end
    local last, is_seam_told -- what is said once for attachments of one model
    for _, attachment in ipairs(plane.attachments) do
      local model = attachment.model
      if attachment.stands_on:is("rafter", "truss") then
        local _, edge = attachment:off_member()
        local needed = book.fastener_edge_diameters * model.fastener_diameter
        -- One test for each attachment that misses its member; where all hit, the last speaks for them.
        if edge < 0 * inch then
          shall.be(format("The fastener of %s meets its member instead of passing %s beside it", attachment:called(), abs(edge)), false)
        elseif edge < needed or same(attachment, plane.attachments[plane.attachments:count()]) then
          shall.be_at_least(format("Fastener of %s to the edge of its member", attachment:called()), edge, needed, inch)
        end
      elseif attachment.stands_on:is("deck") then
        shall.be(format("%s is made to stand on the deck", attachment:called()), model.kind:is("deck mount"))
        -- A test on a deck holds for such a deck or a thicker one.
        if model.kind:is("deck mount") and not (last and same(last, model)) then
          last = model
          shall.be_at_least(format("Deck below %s against the thinnest it was tested on", model:called()), plane.deck_thickness, model.tested_deck_thickness, inch)
        end
      elseif attachment.stands_on:is("seam") then
        shall.be(format("%s is made to clamp a seam", attachment:called()), model.kind:is("seam clamp"))
        if not is_seam_told then
          is_seam_told = true
          review("A clamp's test says nothing of what holds the seam itself: ask the roofing's maker for its clips and their spacing")
        end
      elseif attachment.stands_on:is("blocking", "purlin") then
        review(format("%s stands on %s: its connection to the framing is for a person to judge", attachment:called(), attachment.stands_on))
      else
        shall.be(format("%s stands on something that carries it", attachment:called()), false)
      end
    end
  end,
  remedy = "Move the attachment onto a rafter, or use blocking or a deck mount that was tested for it.",
}
