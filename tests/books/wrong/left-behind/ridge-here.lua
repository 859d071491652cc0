return { title = "ridge here", cite = "1", about = "design", check = function() review("why") end }
