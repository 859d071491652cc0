local function judge_racking(plane, racking, book)
  if racking.mounting:is("rails", "shared rails") then
    shall.be_equal(format("Modules with fewer than %d rails below them", racking.rails_per_module), plane:modules_short_of_rails(racking.rails_per_module), 0)
    if racking.rails_per_module < 2 then
      review(format("Modules are to lie on %s rail each: ask the maker whether they may be held along one line", racking.rails_per_module))
    end
    -- A clamp at each edge of a module stands on the rail.
    local past, over = plane:past_rails(racking.rails_per_module)
    shall.not_exceed(format("Length of %s past the end of a rail below it", over and format("module %s", over) or "a module"), past, book.rail_end_slack, inch)
    local share, apart, module = plane:least_rail_spread()
    if share < book.rail_spread_least then
      review(format("The rails below module %s lie %s apart, %.0f %% of its size across them: ask the maker where it may be clamped", module, apart, 100 * share))
    end
    local out, reach, outer = plane:largest_rail_overhang()
    if out > book.rail_overhang_most then
      review(format("Module %s stands out %s past the outermost rail below it, %.0f %% of its size across them: ask the maker where it may be clamped", outer, reach, 100 * out))
    end
  end
  if racking.mounting:is("rail-less", "seam clamps") then
    if plane.rails:count() > 0 then
      review(format("The racking is called %s, but rails lie on this roof: say how the modules are held", racking.mounting))
    else
      local few, module = plane:modules_short_of_rails(book.clamped_points_least)
      if few > 0 then review(format("Modules held at fewer than %d points (%s is the first of %d): ask the maker where they may be clamped", book.clamped_points_least, module, few)) end
    end
  end
  if racking.mounting:is("ballasted") then
    review("A ballasted array stays by its weight and friction: an engineer judges wind, earthquake and the roof below, whatever attachments it has")
  elseif racking.mounting:is("building-integrated", "ground") then
    review(format("The racking is called %s, but modules and attachments of it lie on this roof: say how they are held", racking.mounting))
  end
end

-- Attachments that have the same to be said of them are told together: the first three by name, and how many more.
local function gather(told, key, attachment)
  local group = told[key]
  if not group then
    group = { count = 0, names = "", first = attachment }
    told[key] = group
  end
  group.count = group.count + 1
  if group.count < 2 then
    group.names = attachment:called()
  elseif group.count <= 3 then
    group.names = format("%s, %s", group.names, attachment:called())
  end
end

local function names(group)
  if group.count > 3 then return format("%s and %d more", group.names, group.count - 3) end
  return group.names
end

-- The fastener nearest to an edge for what it needs, and the one farthest beside its member.
local function judge_edges(told, near, missed)
  if missed then
    shall.be_equal(format("Attachments whose fastener misses its member (%s; %s passes %s beside it)", names(told.missed), missed.at:called(), abs(missed.edge)), told.missed.count, 0)
  end
  if near then
    local more = ""
    if told.near and told.near.count > 1 then more = format(" (of %d too near to one: %s)", told.near.count, names(told.near)) end
    shall.be_at_least(format("Fastener of %s to the edge of its member%s", near.at:called(), more), near.edge, near.needed, inch)
  end
end

local function judge_footing(told, plane)
  if told.deck then
    shall.be_equal(format("Attachments on the deck that are not made to stand on it (%s, %s)", told.deck.first.model:called(), names(told.deck)), told.deck.count, 0)
  end
  if told.boards then
    review(format("On boards stand %s: a mount for the deck is tested on plywood or OSB as a rule, ask its maker whether boards hold it", names(told.boards)))
  end
  if told.seam then
    shall.be_equal(format("Attachments on a seam that are not made to clamp one (%s, %s)", told.seam.first.model:called(), names(told.seam)), told.seam.count, 0)
  end
  if told.none then
    shall.be_equal(format("Attachments that stand on nothing that carries them (%s)", names(told.none)), told.none.count, 0)
  end
  for _, kind in ipairs({ "blocking", "purlin" }) do
    local group = told[kind]
    if group then review(format("On %s stand %s: how it is held to the framing is for a person to judge", kind, names(group))) end
  end
  for _, kind in ipairs({ "rafter", "truss" }) do
    local group = told[format("on a %s", kind)]
    if group then
      review(format("The design says that %s stand on a %s, but that the plane's members are of another kind, %s: say which holds", names(group), kind, plane.framing.kind))
    end
  end
end

---@type plumbrule.Rule
return {
  title = "Attachments stand on what carries them",
  cite = { ["2018"] = "R324.4.1; NDS 12.5.1 (edge distance, from memory)", ["2021"] = "R324.4.1; NDS 12.5.1 (edge distance, from memory)",
    ["2024"] = "R329.4.1 (number from memory); NDS 12.5.1 (edge distance, from memory)" },
  about = "roof_plane",
  applies = function(plane) return plane.modules:count() > 0 end,
  check = function(plane, book, design)
    shall.be_equal("Modules that no attachment carries", plane:unsupported_modules(), 0)
    judge_racking(plane, design.racking, book)
    local told, near, missed = {}, nil, nil
    local last, is_seam_told -- what is said once for attachments of one model
    for _, attachment in ipairs(plane.attachments) do
      local model = attachment.model
      if attachment.stands_on:is("rafter", "truss") then
        local _, edge = attachment:off_member()
        local needed = book.fastener_edge_diameters * model.fastener_diameter
        if edge < 0 * inch then
          gather(told, "missed", attachment)
          if not missed or edge < missed.edge then missed = { edge = edge, at = attachment } end
        else
          if edge < needed then gather(told, "near", attachment) end
          if not near or edge * near.needed < near.edge * needed then near = { edge = edge, needed = needed, at = attachment } end
        end
        if not same(tostring(attachment.stands_on), tostring(plane.framing.kind)) then
          gather(told, format("on a %s", attachment.stands_on), attachment)
        end
      elseif attachment.stands_on:is("deck") then
        if not model.kind:is("deck mount") then gather(told, "deck", attachment) end
        if plane.deck:is("boards") then gather(told, "boards", attachment) end
        -- A test on a deck holds for such a deck or a thicker one.
        if model.kind:is("deck mount") and not (last and same(last, model)) then
          last = model
          shall.be(format("%s is made to stand on the deck", model:called()), true)
          shall.be_at_least(format("Deck below %s against the thinnest it was tested on", model:called()), plane.deck_thickness, model.tested_deck_thickness, inch)
        end
      elseif attachment.stands_on:is("seam") then
        if not model.kind:is("seam clamp") then gather(told, "seam", attachment) end
        if not is_seam_told then
          is_seam_told = true
          review("A clamp's test says nothing of what holds the seam itself: ask the roofing's maker for its clips and their spacing")
        end
      elseif attachment.stands_on:is("blocking", "purlin") then
        gather(told, format("%s", attachment.stands_on), attachment)
      else
        gather(told, "none", attachment)
      end
    end
    judge_edges(told, near, missed)
    judge_footing(told, plane)
  end,
  remedy = "Move each attachment onto the middle of a rafter, or use blocking or a mount that was tested for what it stands on.",
}
