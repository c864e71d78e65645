import "../../styles/font.css";
import "./ground.css";
import "./bands.css";
import "./glance.css";
import "./forms.css";
