return { title = "odd", cite = "1", about = "design", check = function() review("why") end }
