"""The mechanics and the plan: laws, contacts, tools, solver, outcome, plan and result files."""
