---@type plumbrule.Rule
-- 250.142(B), 408.40 from memory. The neutral is bonded once, at the service; a detached building has a rule of its own.
return {
  title = "Neutral of a panel behind the service",
  cite = "250.142(B), 408.40",
  about = "panel",
  applies = function(panel)
    return not panel.status:is("removed") and not panel.is_service_panel and not panel.detached_building
  end,
  check = function(panel)
    shall.be("Its neutral is kept apart from ground", not panel.neutral_bonded)
  end,
  remedy = "Take the bonding screw or strap out, and land neutrals and grounding conductors on bars of their own.",
}
